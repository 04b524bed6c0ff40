// Between the mains and the low-voltage compartment: a trough of two walls with air between them, closed at both ends and below,
// open above. Printed as it stands.
include <parameters.scad>

module barrier()
{
    width = box_inside[1] - 2 * barrier_side_gap;
    depth = 2 * barrier_wall + barrier_gap;
    difference()
    {
        union()
        {
            cube([depth, width, barrier_height]);
            cube([depth + barrier_flange, width, barrier_floor]);
            for (y = gusset_at)
            {
                barrier_gusset(depth, y);
            }
        }

        translate([barrier_wall, barrier_wall, barrier_floor])
        {
            cube([barrier_gap, width - 2 * barrier_wall, barrier_height]);
        }

        // The holes of the two walls are apart, so that nothing can be pushed straight through.
        for (i = [0 : crossing_holes - 1])
        {
            crossing(0, crossing_y(i));
            crossing(barrier_wall + barrier_gap, crossing_y(i) + crossing_apart);
        }

        for (y = barrier_screws())
        {
            translate([depth + barrier_flange / 2, y, -1])
            {
                cylinder(d = screw_hole, h = barrier_floor + 2, $fn = 20);
            }
        }
    }
}

// Holes in the wall to the mains side, from the barrier's end.
function crossing_y(i) = crossing_from + crossing_pitch * i;

function barrier_screws() =
    let (width = box_inside[1] - 2 * barrier_side_gap)
    [width / 8 + 6, 3 * width / 8, 5 * width / 8, 7 * width / 8 - 6];

module crossing(x, y)
{
    translate([x - 1, y, crossing_height])
    {
        rotate([0, 90, 0])
        {
            cylinder(d = crossing_hole, h = barrier_wall + 2, $fn = 20);
        }
    }
}

module barrier_gusset(depth, y)
{
    translate([depth, y + barrier_wall / 2, barrier_floor])
    {
        rotate([90, 0, 0])
        {
            linear_extrude(barrier_wall)
            {
                polygon([[-0.5, -0.5], [barrier_flange - 1, -0.5], [-0.5, 45]]);
            }
        }
    }
}
