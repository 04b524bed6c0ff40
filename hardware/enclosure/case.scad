// Case of the build without mains wiring: the board on its posts, plugs and sounder in one end, the leads through the other.
// Printed as it stands, its lid upside down.
include <parameters.scad>
use <board-cradle.scad>

module case_box()
{
    end = case_inside[0];
    difference()
    {
        translate([-case_wall, -case_wall, -case_wall])
        {
            cube([end + 2 * case_wall, case_inside[1] + 2 * case_wall, case_inside[2] + case_wall]);
        }

        difference()
        {
            cube([end, case_inside[1], case_inside[2] + 1]);
            case_columns();
            case_posts();
            translate([case_rib[0], -1, -1])
            {
                cube([case_rib[1], case_inside[1] + 2, case_rib[2] + 1]);
            }
        }

        for (i = [0 : len(case_opening_y) - 1])
        {
            through(end, case_opening_y[i], case_opening_height, case_wall, case_opening_hole(i));
        }

        // Each lead's hole, and a hole on either side of it in the rib, for its tie.
        for (y = case_lead_y)
        {
            through(-case_wall, y, case_lead_height, case_wall, case_lead_hole);
            for (side = [-1, 1])
            {
                through(case_rib[0], y + side * case_lead_hole, case_rib[2] / 2, case_rib[1], tie_slot[1]);
            }
        }

        for (at = case_screws())
        {
            translate([at[0], at[1], case_inside[2] - 15])
            {
                cylinder(d = pilot_hole, h = 16);
            }
        }
    }
}

module case_lid()
{
    difference()
    {
        union()
        {
            translate([-case_wall, -case_wall, 0])
            {
                cube([case_inside[0] + 2 * case_wall, case_inside[1] + 2 * case_wall, case_wall]);
            }

            // A rim that keeps it in its place and dust out.
            linear_extrude(case_wall + 3)
            {
                difference()
                {
                    case_opening(fit);
                    case_opening(fit + 2);
                }
            }
        }

        for (at = case_screws())
        {
            translate([at[0], at[1], -1])
            {
                cylinder(d = case_screw_hole, h = case_wall + 5);
            }
        }
    }
}

// Button, lamp, console and sounder: the holes of the box.
function case_opening_hole(i) = [panel_hole[0], panel_hole[1], panel_hole[3], sounder_hole][i];

function case_screws() =
    [for (x = [case_column / 2, case_inside[0] - case_column / 2], y = [case_column / 2, case_inside[1] - case_column / 2])
        [x, y]];

module case_columns()
{
    for (at = case_screws())
    {
        translate([at[0] - case_column / 2 - 1, at[1] - case_column / 2 - 1, -1])
        {
            cube([case_column + 2, case_column + 2, case_inside[2] + 3]);
        }
    }
}

module case_posts()
{
    for (at = board_corners())
    {
        translate([case_board_at[0] + at[0] - cradle_margin, case_board_at[1] + at[1] - cradle_margin, -1])
        {
            difference()
            {
                cylinder(d = board_post_width, h = board_post + 1);
                translate([0, 0, 1])
                {
                    cylinder(d = pilot_hole, h = board_post + 1);
                }
            }
        }
    }
}

module through(x, y, height, depth, diameter)
{
    translate([x - 1, y, height])
    {
        rotate([0, 90, 0])
        {
            cylinder(d = diameter, h = depth + 2);
        }
    }
}

// The case's inside between the columns, so much smaller on each side.
module case_opening(less)
{
    for (cut = [[less, case_column + less], [case_column + less, less]])
    {
        translate(cut)
        {
            square([case_inside[0] - 2 * cut[0], case_inside[1] - 2 * cut[1]]);
        }
    }
}
