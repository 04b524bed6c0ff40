include <parameters.scad>

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
