// Holds the board with the ESP32 and the relay's driver on four posts in the low-voltage compartment.
include <parameters.scad>

function cradle_size() = [board[0] + 2 * cradle_margin, board[1] + 2 * cradle_margin];

module board_cradle()
{
    size = cradle_size();
    difference()
    {
        union()
        {
            cube([size[0], size[1], cradle_floor]);
            for (at = board_corners())
            {
                translate([at[0], at[1], 0])
                {
                    cylinder(d = board_post_width, h = cradle_floor + board_post);
                }
            }
        }

        translate([cradle_ring, cradle_ring, -1])
        {
            cube([size[0] - 2 * cradle_ring, size[1] - 2 * cradle_ring, cradle_floor + 2]);
        }

        for (at = board_corners())
        {
            translate([at[0], at[1], cradle_floor])
            {
                cylinder(d = pilot_hole, h = board_post + 1);
            }
        }

        for (at = cradle_screws())
        {
            translate([at[0], at[1], -1])
            {
                cylinder(d = screw_hole, h = cradle_floor + 2);
            }
        }
    }
}

function board_corners() =
    [for (x = [board_hole[0], board[0] - board_hole[0]], y = [board_hole[1], board[1] - board_hole[1]])
        [x + cradle_margin, y + cradle_margin]];

function cradle_screws() =
    let (size = cradle_size())
    [[size[0] / 2, cradle_ring / 2], [size[0] / 2, size[1] - cradle_ring / 2]];
