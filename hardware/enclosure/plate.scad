// The mains plate's parts, each a plain box of its size, and the template to drill the plate by.
include <parameters.scad>
use <barrier.scad>
use <board-cradle.scad>
use <painted.scad>
use <sensor-holder.scad>

red = [0.85, 0.2, 0.2];
grey = [0.45, 0.45, 0.5];
copper = [0.45, 0.75, 0.35];
blue = [0.45, 0.6, 0.95];

module plate_parts()
{
    painted([0.85, 0.85, 0.87])
    {
        block(rail);
    }

    painted(copper)
    {
        block(earth_foot);
        translate([earth_stud[0] + earth_stud[2] / 2, earth_stud[1] + earth_stud[3] / 2, plate_top])
        {
            cylinder(d = earth_stud[2], h = 1);
            cylinder(d = stud_hole, h = earth_stud[4]);
        }
    }

    painted(red)
    {
        block(neutral_terminals);
        block(fuse);
        block(line_terminals);
    }

    painted(grey)
    {
        block(end_stop);
        block(last_stop);
        for (i = [0 : len(tie_x) - 1])
        {
            block([tie_x[i] - tie_base[0] / 2, tie_y[i] - tie_base[1] / 2, tie_base[0], tie_base[1], tie_base[2]]);
        }
    }

    // Two ends: mains, and low voltage.
    for (part = [relay, supply])
    {
        mains = part[3] - low_voltage_end;
        painted(red)
        {
            block([part[0], part[1], part[2], mains, part[4]]);
        }

        painted(blue)
        {
            block([part[0], part[1] + mains, part[2], low_voltage_end, part[4]]);
        }
    }
}

module block(part)
{
    // Neighbours on the rail are told apart by a seam.
    translate([part[0] + 0.4, part[1], plate_top])
    {
        cube([part[2] - 0.8, part[3], part[4]]);
    }
}

// All holes that are drilled in the plate: x, y, diameter.
function plate_holes() = concat(
    [for (x = rail_screw) [x, rail[1] + rail[3] / 2, screw_hole]],
    [[earth_stud[0] + earth_stud[2] / 2, earth_stud[1] + earth_stud[3] / 2, stud_hole]],
    [for (i = [0 : len(tie_x) - 1]) [tie_x[i], tie_y[i], screw_hole]],
    [for (at = holder_screws(split_body)) [sensor_at[0] + at[0], sensor_at[1] + at[1], screw_hole]],
    [for (at = holder_screws(burden_body)) [burden_at[0] + at[0], burden_at[1] + at[1], screw_hole]],
    [for (y = barrier_screws())
        [barrier_at + 2 * barrier_wall + barrier_gap + barrier_flange / 2, barrier_side_gap + y, screw_hole]],
    [for (at = cradle_screws()) [cradle_at[0] + at[0], cradle_at[1] + at[1], screw_hole]]);

// One of the template's two sheets, at 1 : 1; they are joined along the barrier's face to the mains.
module template(mains)
{
    from = mains ? 0 : barrier_at;
    to = mains ? barrier_at : box_inside[0];
    intersection()
    {
        outlines();
        translate([from, 0])
        {
            square([to - from + 0.3, box_inside[1]]);
        }
    }

    for (hole = plate_holes())
    {
        if (hole[0] >= from && hole[0] < to)
        {
            translate([hole[0], hole[1]])
            {
                ring(hole[2]);
            }
        }
    }

    // Beside the plate.
    translate([from, box_inside[1]])
    {
        words([1, 5], mains ? "UNTRIED. Mains plate, mains side, seen from above; mains end left."
            : "Low-voltage side.");
        words([1, 12], mains ? str("Holes ", screw_hole, " mm, at PE ", stud_hole, " mm. PS1: mark from the part.")
            : str("Holes ", screw_hole, " mm."));
        words([1, 19], "Print at 100 %: this line is 80 mm.");
        translate([1, 28])
        {
            scale_line(80);
        }
    }

    // Both ways.
    translate([mains ? from - 4 : to + 4, 60])
    {
        rotate(90)
        {
            scale_line(80);
        }
    }
}

module outlines()
{
    frame()
    {
        difference()
        {
            translate([plate_gap, plate_gap])
            {
                square([box_inside[0] - 2 * plate_gap, box_inside[1] - 2 * plate_gap]);
            }

            cut = box_corner + plate_gap;
            for (x = [0, box_inside[0] - cut], y = [0, box_inside[1] - cut])
            {
                translate([x, y])
                {
                    square(cut);
                }
            }
        }
    }

    depth = 2 * barrier_wall + barrier_gap + barrier_flange;
    drawn(concat(barrier_at, barrier_side_gap, depth, box_inside[1] - 2 * barrier_side_gap), "");
    drawn(concat(cradle_at, cradle_size()), "board cradle");
    drawn(concat(sensor_at, holder_size(split_body)), "T1");
    drawn(concat(burden_at, holder_size(burden_body)), "R18");
    drawn(rail, "");
    for (part = [[neutral_terminals, "XN"], [fuse, "F1"], [line_terminals, "XL"], [relay, "K1"], [supply, "PS1"],
        [earth_foot, ""], [end_stop, ""], [earth_stud, ""]])
    {
        drawn(part[0], part[1]);
    }

    words([earth_stud[0] + 3, earth_stud[1] + 4], "PE");
}

module drawn(part, title)
{
    translate([part[0], part[1]])
    {
        frame()
        {
            square([part[2], part[3]]);
        }

        words([part[2] / 2 - 1.3 * len(title), part[3] / 2 + 3.5], title);
    }
}

module frame()
{
    difference()
    {
        children();
        offset(delta = -0.3)
        {
            children();
        }
    }
}

// A hole's edge, and a cross for the centre punch.
module ring(diameter)
{
    difference()
    {
        circle(d = diameter);
        circle(d = diameter - 0.5);
    }

    square([2, 0.3], center = true);
    square([0.3, 2], center = true);
}

module scale_line(length)
{
    square([length, 0.3]);
    for (x = [0, length - 0.3])
    {
        translate([x, -2])
        {
            square([0.3, 4]);
        }
    }
}

module words(at, text)
{
    translate(at)
    {
        text(text, size = 4);
    }
}
