// The printed parts in the bought box, for the pictures. What is bought is drawn as a plain shape.
include <parameters.scad>
use <barrier.scad>
use <board-cradle.scad>
use <sensor-holder.scad>
use <button-guard.scad>

// Seen from above one side, without lid and the near walls.
module assembly()
{
    $cut = false;
    box_cut();
    bought();
    printed();
}

// Seen from straight above, without the lid, with names and spacings.
module plan()
{
    $cut = false;
    color([0.72, 0.76, 0.8])
    {
        linear_extrude(1)
        {
            difference()
            {
                translate([-box_wall, -box_wall])
                {
                    square([box_inside[0] + 2 * box_wall, box_inside[1] + 2 * box_wall]);
                }

                square([box_inside[0], box_inside[1]]);
            }
        }

        corner_columns(20);
    }

    bought();
    printed();
    barrier_air();
    translate([0, 0, box_inside[2] + 5])
    {
        plan_names();
    }
}

// Seen from the long side, cut open in the middle of the box.
module section()
{
    $cut = true;
    painted([0.72, 0.76, 0.8])
    {
        difference()
        {
            translate([-box_wall, -box_wall, -box_wall])
            {
                cube([box_inside[0] + 2 * box_wall, box_inside[1] + 2 * box_wall, box_inside[2] + 2 * box_wall]);
            }

            cube(box_inside);
        }
    }

    painted([0.93, 0.94, 0.95])
    {
        translate([0, box_inside[1] - 1, 0])
        {
            cube([box_inside[0], 1, box_inside[2]]);
        }
    }

    printed();
    barrier_air();
    bought();
    translate([0, -10, 0])
    {
        rotate([90, 0, 0])
        {
            section_names();
        }
    }
}

// In one colour, the cut as well, where there is one. Every colour has a cut of its own: where two lie in the same plane, a
// preview paints both alike.
module painted(paint)
{
    own = 0.5 * paint[0] + 0.3 * paint[1] + 0.1 * paint[2];
    color(paint)
    {
        difference()
        {
            union()
            {
                children();
            }

            if ($cut)
            {
                translate([-100, -100, -100])
                {
                    cube([box_inside[0] + 200, 100 + box_inside[1] / 2 - 12 + own, box_inside[2] + 200]);
                }
            }
        }
    }
}

module printed()
{
    painted([0.95, 0.75, 0.2])
    {
        translate([barrier_at, barrier_side_gap, plate_top])
        {
            barrier();
        }
    }

    painted([0.3, 0.65, 0.35])
    {
        translate([cradle_at[0], cradle_at[1], plate_top])
        {
            board_cradle();
        }
    }

    painted([0.25, 0.5, 0.85])
    {
        translate([sensor_at[0], sensor_at[1], plate_top])
        {
            split_holder();
        }
    }

    painted([0.85, 0.4, 0.2])
    {
        translate([box_inside[0] + box_wall, panel_y[0], panel_height])
        {
            rotate([90, 0, 90])
            {
                button_guard();
            }
        }
    }
}

// What counts of the barrier: the air in it.
module barrier_air()
{
    painted([1, 1, 1])
    {
        translate([barrier_at + barrier_wall, barrier_side_gap + barrier_wall, plate_top + barrier_floor])
        {
            cube([barrier_gap, box_inside[1] - 2 * (barrier_side_gap + barrier_wall), barrier_height - barrier_floor + 0.1]);
        }
    }
}

module bought()
{
    // Where bare mains metal may be.
    painted([0.85, 0.2, 0.2, $cut ? 1 : 0.45])
    {
        translate([bare_from[0], bare_from[1], plate_top])
        {
            cube([bare_to[0] - bare_from[0], bare_to[1] - bare_from[1], bare_height]);
        }
    }

    painted([0.35, 0.35, 0.4])
    {
        translate([sensor_at[0] + sensor_ear + sensor_wall + fit, sensor_at[1] + sensor_wall + fit, plate_top + sensor_floor])
        {
            difference()
            {
                cube(split_body);
                translate([split_bore_at[0], split_body[1] + 1, split_bore_at[1]])
                {
                    rotate([90, 0, 0])
                    {
                        cylinder(d = split_bore, h = split_body[1] + 2);
                    }
                }
            }
        }

        for (y = gland_y)
        {
            translate([-box_wall - 22, y, gland_height])
            {
                rotate([0, 90, 0])
                {
                    cylinder(d = gland_nut - 4, h = 22);
                    cylinder(d = gland_hole, h = 22 + box_wall);
                    translate([0, 0, 22 + box_wall])
                    {
                        cylinder(d = gland_nut, h = gland_depth, $fn = 6);
                    }
                }
            }
        }

        for (i = [0 : len(panel_y) - 1])
        {
            translate([box_inside[0] - panel_depth, panel_y[i], panel_height])
            {
                rotate([0, 90, 0])
                {
                    cylinder(d = panel_hole[i] - 2, h = panel_depth + box_wall + (i == 0 ? guard_floor + button_proud : 8));
                    translate([0, 0, panel_depth - button_nut])
                    {
                        cylinder(d = panel_nut[i], h = button_nut, $fn = 6);
                    }
                }
            }
        }
    }

    // The sounder in the far long wall, and the breaker for equipment above the glands.
    painted([0.35, 0.35, 0.4])
    {
        translate([sounder_at[0], box_inside[1] + box_wall + 6, sounder_at[1]])
        {
            rotate([90, 0, 0])
            {
                cylinder(d = sounder_nut, h = 6);
                cylinder(d = sounder_hole - 2, h = sounder_depth + box_wall + 6);
                translate([0, 0, box_wall + 6])
                {
                    cylinder(d = sounder_nut, h = 4, $fn = 6);
                }
            }
        }

        translate([0, breaker_at[0] - breaker_body[0] / 2, breaker_at[1] - breaker_body[1] / 2])
        {
            cube([breaker_body[2], breaker_body[0], breaker_body[1]]);
        }

        translate([-box_wall - 10, breaker_at[0], breaker_at[1]])
        {
            rotate([0, 90, 0])
            {
                cylinder(d = breaker_hole - 2, h = 12 + box_wall);
                translate([0, 0, 7])
                {
                    cylinder(d = breaker_nut, h = 3, $fn = 6);
                }
            }
        }
    }

    painted([0.1, 0.45, 0.3])
    {
        translate([cradle_at[0] + cradle_margin, cradle_at[1] + cradle_margin, plate_top + cradle_floor + board_post])
        {
            cube(board);
            translate([20, 25, board[2]])
            {
                cube([28, 52, 12]);
            }
        }
    }

    painted([0.75, 0.75, 0.78])
    {
        for (cut = [[plate_gap, box_corner + plate_gap], [box_corner + plate_gap, plate_gap]])
        {
            translate([cut[0], cut[1], plate_top - 3])
            {
                cube([box_inside[0] - 2 * cut[0], box_inside[1] - 2 * cut[1], 2.9]);
            }
        }
    }
}

module box_cut()
{
    color([0.8, 0.85, 0.9, 0.25])
    {
        translate([-box_wall, -box_wall, -box_wall])
        {
            cube([box_inside[0] + 2 * box_wall, box_inside[1] + 2 * box_wall, box_wall]);
        }

        translate([-box_wall, -box_wall, 0])
        {
            cube([box_inside[0] + 2 * box_wall, box_wall, box_inside[2]]);
        }

        for (x = [-box_wall, box_inside[0]])
        {
            translate([x, 0, 0])
            {
                cube([box_wall, box_inside[1], box_inside[2]]);
            }
        }

        corner_columns(box_inside[2]);
    }
}

module corner_columns(height)
{
    for (x = [0, box_inside[0] - box_corner], y = [0, box_inside[1] - box_corner])
    {
        translate([x, y, 0])
        {
            cube([box_corner, box_corner, height]);
        }
    }
}

module plan_names()
{
    depth = 2 * barrier_wall + barrier_gap;
    middle = (bare_from[0] + bare_to[0]) / 2;
    name([middle, 29], "BARE MAINS");
    name([middle, 19], "here only");
    name([middle, sensor_at[1] + 36], "sensor");
    name([185, cradle_at[1] - 10], "board cradle");
    name([57, -14], "MAINS");
    name([185, -14], "LOW VOLTAGE");
    name([barrier_at + depth / 2, 164], "barrier");
    name([-46, gland_y[0]], "supply");
    name([-46, gland_y[1]], "tool");
    name([-46, gland_y[2]], "vacuum");
    name([288, panel_y[0] - 2], "button, guard");
    name([262, panel_y[1] - 2], "lamp");
    name([291, panel_y[2] - 2], "sensor, two circuits");
    name([267, panel_y[3] - 2], "console");
    name([sounder_at[0] + 36, 166], "sounder");
    name([-46, breaker_at[0]], "breaker");
    span([bare_to[0], barrier_at], -30, -8, str(barrier_at - bare_to[0], " mm"));
    span([barrier_at, barrier_at + depth], -46, 0, str(depth, " mm, of it ", barrier_gap, " mm air"));
    span([0, box_inside[0]], 178, 0, str(box_inside[0], " mm inside, ", box_inside[1], " mm wide"));
}

module section_names()
{
    depth = 2 * barrier_wall + barrier_gap;
    name([(bare_from[0] + bare_to[0]) / 2, 50], "BARE MAINS");
    name([(bare_from[0] + bare_to[0]) / 2, 40], "here only");
    name([barrier_at + depth / 2, 124], "barrier, up to the lid");
    name([190, 100], "LOW VOLTAGE");
    name([275, panel_height + 12], "console, sensor");
    name([-30, gland_height + 22], "glands");
    name([104, -36], "nothing runs below the mounting plate");
    span([barrier_at, barrier_at + depth], -12, 0, str(depth, " mm, of it ", barrier_gap, " mm air"));
    translate([-56, 0])
    {
        rotate([0, 0, 90])
        {
            span([plate_top, plate_top + barrier_height], 0, 0, str("barrier ", barrier_height, " mm"));
        }
    }

    translate([-78, 0])
    {
        rotate([0, 0, 90])
        {
            span([0, box_inside[2]], 0, 0, str(box_inside[2], " mm inside"));
        }
    }
}

module name(at, words)
{
    color([0.1, 0.1, 0.1])
    {
        translate([at[0], at[1]])
        {
            linear_extrude(0.5)
            {
                text(words, size = 6.5, halign = "center", valign = "center");
            }
        }
    }
}

// A line from the one x to the other, with its length below or above it, moved aside where it would not fit.
module span(x, y, aside, words)
{
    color([0.1, 0.1, 0.1])
    {
        translate([0, y])
        {
            linear_extrude(0.5)
            {
                translate([x[0], -0.4])
                {
                    square([x[1] - x[0], 0.8]);
                }

                for (end = x)
                {
                    translate([end - 0.4, -4])
                    {
                        square([0.8, 8]);
                    }
                }
            }
        }
    }

    name([(x[0] + x[1]) / 2 + aside, y + (y < 0 ? -9 : 9)], words);
}
