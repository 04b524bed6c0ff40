// The printed parts in the bought box, for the pictures. What is bought is drawn as a plain shape.
include <parameters.scad>
use <barrier.scad>
use <board-cradle.scad>
use <sensor-holder.scad>
use <button-guard.scad>
use <painted.scad>
use <plate.scad>

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

        translate([burden_at[0], burden_at[1], plate_top])
        {
            burden_holder();
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
    plate_parts();
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
    over([line_terminals, neutral_terminals, relay, supply, earth_stud], ["XL", "XN", "K1", "PS1", "PE"]);
    name([fuse[0] + fuse[2] / 2, fuse[1] + fuse[3] + 7], "F1");
    name([102, sensor_at[1] + 20], "T1");
    name([burden_at[0] + 34, burden_at[1] + 11], "R18");
    name([251, cradle_at[1] - 12], "board cradle");
    name([87, -14], "MAINS");
    name([246, -14], "LOW VOLTAGE");
    name([barrier_at - 4, box_inside[1] + 14], "barrier");
    name([-56, gland_y[0]], "supply");
    name([-60, gland_y[1]], "vacuum");
    name([-46, breaker_at[0]], "breaker");
    name([-46, gland_y[2]], "tool");
    name([352, panel_y[0] - 2], "button, guard");
    name([326, panel_y[1] - 2], "lamp");
    name([350, panel_y[2] - 2], "sensor's plug");
    name([334, panel_y[3] - 2], "console");
    name([sounder_at[0] + 46, box_inside[1] + 16], "sounder");
    span([bare_to[0], barrier_at], -32, -10, str(barrier_at - bare_to[0], " mm"));
    span([barrier_at, barrier_at + depth], -54, 0, str(depth, " mm, of it ", barrier_gap, " mm air"));
    span([0, box_inside[0]], box_inside[1] + 32, 0, str(box_inside[0], " mm inside, ", box_inside[1], " mm wide"));
}

// Names in the middle of parts of the plate.
module over(parts, names)
{
    for (i = [0 : len(parts) - 1])
    {
        name([parts[i][0] + parts[i][2] / 2, parts[i][1] + parts[i][3] / 2], names[i]);
    }
}

module section_names()
{
    depth = 2 * barrier_wall + barrier_gap;
    for (label = [[neutral_terminals, "XN"], [fuse, "F1"], [line_terminals, "XL"], [relay, "K1"], [supply, "PS1"]])
    {
        name([label[0][0] + label[0][2] / 2, plate_top + label[0][4] + (label[0][2] < 20 ? 7 : -14)], label[1]);
    }

    name([barrier_at + depth / 2, 126], "barrier, up to the lid");
    name([250, 104], "LOW VOLTAGE");
    name([338, panel_height + 12], "console, sensor");
    name([-22, gland_height + 26], "glands");
    name([130, -36], "nothing runs below the mounting plate");
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
                text(words, size = 8.5, halign = "center", valign = "center");
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

    name([(x[0] + x[1]) / 2 + aside, y + (y < 0 ? -10 : 10)], words);
}
