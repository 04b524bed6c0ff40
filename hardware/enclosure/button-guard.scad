// A collar around the button, outside on the box: an elbow or a hose does not press it. The button's own nut holds it.
include <parameters.scad>

module button_guard()
{
    outer = guard_inner + 2 * guard_wall;
    difference()
    {
        cylinder(d = outer, h = guard_floor + button_proud + guard_above);
        translate([0, 0, guard_floor])
        {
            cylinder(d = guard_inner, h = button_proud + guard_above + 1);
        }

        translate([0, 0, -1])
        {
            cylinder(d = panel_hole[0] + 2 * print_tolerance, h = guard_floor + 2);
        }

        translate([-guard_slot / 2, -outer, guard_floor])
        {
            cube([guard_slot, outer, button_proud + guard_above + 1]);
        }
    }
}
