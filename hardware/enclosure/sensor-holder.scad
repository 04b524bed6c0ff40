// Holds the current transformer on the tool's insulated wire; a cable tie over the top keeps it in its pocket. It holds the
// transformer and not the wire, which is tied on both sides of it.
include <parameters.scad>

function holder_size(body) =
    [body[0] + 2 * (fit + sensor_wall + sensor_ear), body[1] + 2 * (fit + sensor_wall)];

function holder_screws(body) =
    let (size = holder_size(body))
    [for (x = [sensor_ear / 2 - 1.5, size[0] - sensor_ear / 2 + 1.5]) [x, size[1] / 2]];

module sensor_holder(body, bore, bore_at)
{
    size = holder_size(body);
    pocket = [body[0] + 2 * fit, body[1] + 2 * fit];

    // High enough to hold the body, low enough that a split core still opens.
    side = body[2] * 0.6;
    difference()
    {
        union()
        {
            cube([size[0], size[1], sensor_floor]);
            translate([sensor_ear, 0, 0])
            {
                cube([pocket[0] + 2 * sensor_wall, size[1], sensor_floor + side]);
            }
        }

        translate([sensor_ear + sensor_wall, sensor_wall, sensor_floor])
        {
            cube([pocket[0], pocket[1], side + 1]);
        }

        // The wire touches neither wall.
        if (bore > 0)
        {
            translate([sensor_ear + sensor_wall + fit + bore_at[0], size[1] + 1, sensor_floor + bore_at[1]])
            {
                rotate([90, 0, 0])
                {
                    cylinder(d = bore + 2, h = size[1] + 2);
                }

                translate([-bore / 2 - 1, -size[1] - 2, 0])
                {
                    cube([bore + 2, size[1] + 2, side]);
                }
            }
        }

        for (at = holder_screws(body))
        {
            translate([at[0], at[1], -1])
            {
                cylinder(d = screw_hole, h = sensor_floor + 2);
            }
        }

        for (x = [sensor_ear - tie_slot[0] - 0.5, size[0] - sensor_ear + 0.5])
        {
            translate([x, (size[1] - tie_slot[1]) / 2, -1])
            {
                cube([tie_slot[0], tie_slot[1], sensor_floor + 2]);
            }
        }

        // The tie's way below, so that the holder stands flat.
        translate([sensor_ear - tie_slot[0] - 0.5, (size[1] - tie_slot[1]) / 2, -1])
        {
            cube([size[0] - 2 * sensor_ear + 2 * tie_slot[0] + 1, tie_slot[1], 1 + sensor_floor / 2]);
        }
    }
}

module ring_holder()
{
    sensor_holder(ring_body, ring_bore, ring_bore_at);
}

module split_holder()
{
    sensor_holder(split_body, split_bore, split_bore_at);
}

// The board with the burden and the clamps lies on ledges: nothing presses on what is soldered below it.
module burden_holder()
{
    sensor_holder(burden_body, 0, [0, 0]);
    size = holder_size(burden_body);
    for (y = [sensor_wall, size[1] - sensor_wall - burden_ledge[0] - fit])
    {
        translate([sensor_ear + sensor_wall, y, sensor_floor])
        {
            cube([burden_body[0] + 2 * fit, burden_ledge[0] + fit, burden_ledge[1]]);
        }
    }
}
