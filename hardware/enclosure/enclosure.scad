// One part by its name, as it is printed:
//   openscad -D 'part="barrier"' -o barrier.stl enclosure.scad
// parts: barrier, board-cradle, ring-holder, split-holder, burden-holder, case, case-lid, button-guard; three pictures: assembly,
// plan, section; and two sheets to drill by, in 2D: drill-mains, drill-low-voltage.
include <parameters.scad>
use <barrier.scad>
use <board-cradle.scad>
use <sensor-holder.scad>
use <button-guard.scad>
use <assembly.scad>
use <plate.scad>
use <case.scad>

part = "assembly";
$fn = 48;

if (part == "barrier")
{
    barrier();
}
else if (part == "board-cradle")
{
    board_cradle();
}
else if (part == "ring-holder")
{
    ring_holder();
}
else if (part == "split-holder")
{
    split_holder();
}
else if (part == "burden-holder")
{
    burden_holder();
}
else if (part == "case")
{
    translate([0, 0, case_wall])
    {
        case_box();
    }
}
else if (part == "case-lid")
{
    case_lid();
}
else if (part == "button-guard")
{
    button_guard();
}
else if (part == "assembly")
{
    assembly();
}
else if (part == "plan")
{
    plan();
}
else if (part == "section")
{
    section();
}
else if (part == "drill-mains")
{
    template(true);
}
else if (part == "drill-low-voltage")
{
    template(false);
}
else
{
    assert(false, str("There is no part '", part, "'."));
}
