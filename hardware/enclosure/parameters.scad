// The one file with numbers. All lengths in mm. Measure your own box and bought parts, put their numbers here, and run the tests
// (dotnet test tests/enclosure): they work out every spacing from this file and say which one became too small.
//
// The corner of the box's inside at its mains end is 0, 0, 0: x runs from the mains end to the low-voltage end, y across, z up.

// --- The box, bought, measured inside ---
box_inside = [292, 212, 112];  // length, width, height from the floor to the closed lid
box_wall = 4;
box_corner = 16;               // side of the square that a lid screw's column takes in each corner
plate_top = 9;                 // upper face of the mounting plate above the floor: stand-offs and plate
plate_gap = 1;                 // from the plate to the walls; its corners are cut out around the columns, as far from them

// --- Where bare mains metal may be: all parts of the plate that carry mains stand in it ---
bare_from = [35, 36];          // x, y
bare_to = [171, 128];          // x, y
bare_height = 62;              // above the mounting plate
wire_least = 2.0;              // outer diameter of the thinnest wire in the mains compartment

// --- The mains plate of the 120 V build with a relay, part by part ---
// x, y of its corner, then its size along x, across, and its height above the plate. Classes and sources: README.md. Wires enter
// the long parts at their ends: mains from y = 0, the supply's output and the relay's coil leave towards the sensor.
rail = [28, 58.5, 101, 35, 7.5];
earth_foot = [29, 52.2, 6.2, 47.7, 47.5];
neutral_terminals = [35.2, 52.2, 26.8, 47.7, 47.5];    // four, and an end plate
fuse = [62, 39.5, 8.2, 73, 57];
line_terminals = [70.2, 52.2, 26.8, 47.7, 47.5];       // four, and an end plate
end_stop = [97, 52, 9.5, 48, 35];                      // holds the relay's coil away from the line
relay = [106.5, 36.7, 15.8, 78.6, 61];                 // in its socket
last_stop = [122.3, 52, 6, 48, 35];
supply = [131, 36, 39.5, 91, 28.5];
earth_stud = [14, 133.5, 40, 40, 25];                  // with room for the lugs all around
low_voltage_end = 20;          // of relay and supply: how far their low-voltage terminals reach from that end
rail_screw = [48, 110];        // x of its screws
stud_hole = 5.3;               // M5
tie_base = [19, 19, 8];        // one screw in the middle
tie_x = [44, 76, 112, 151, 18, 18, 48, 83, 92, 31];
tie_y = [24, 24, 22, 14, 40, 90, 121, 129, 191, 183];
core = 4.7;                    // a core of a heavy cord of 12 AWG, over its insulation
core_straight = 10;            // from a clamp to where it may bend
core_bend = 4;                 // inner radius of a bend in diameters
sleeved = 3.5;                 // a low-voltage wire in its sleeve

// --- Printing ---
print_tolerance = 0.3;         // a printed gap may be so much narrower, a printed hole so much smaller
fit = 0.4;                     // play on each side of a bought part in its pocket
screw_hole = 4.4;              // for M4 of plastic
screw_head = 8;                // diameter of its head or nut
pilot_hole = 2.6;              // for a screw of 3 mm that cuts its own thread in plastic

// --- Barrier: two walls with air between them ---
barrier_at = 183;              // x of its face to the mains compartment
barrier_wall = 3;
barrier_gap = 8.4;             // air between its walls
barrier_height = 102;
barrier_side_gap = 1;          // to the box's long walls, on each side
barrier_flange = 14;           // foot on the low-voltage side, with the screws
barrier_floor = 4;
gusset_at = [55, 105, 154];    // from the barrier's end, on its foot: between screws and holes
crossing_hole = 6;             // holes for the low-voltage wires to coil, sensors, supply and earth
crossing_height = 16;          // their centres above the mounting plate
crossing_holes = 5;            // in each wall
crossing_from = 84;            // the first, in the wall to the mains side, from the barrier's end
crossing_pitch = 12;           // from one to the next
crossing_apart = 64;           // from a hole in the one wall to the same wires' hole in the other, along the wall

// --- Board cradle ---
board = [70, 100, 1.6];        // x, y, thickness
board_hole = [3.5, 3.5];       // centres of its holes from its corners
board_parts = 25;              // height of what stands on it, plugs included
board_post = 8;
board_post_width = 8;
cradle_at = [213, 53];         // x, y of its corner
cradle_floor = 3;
cradle_margin = 3;             // its floor beyond the board
cradle_ring = 14;              // width of its floor along the edges

// --- Sensor holders, in the mains compartment, on the tool's insulated wire ---
sensor_at = [55, 147];         // x, y of the corner of either holder
sensor_wall = 3;
sensor_floor = 4;
sensor_ear = 15;               // at each end, with a screw and a slot for the tie
tie_slot = [2.5, 6];           // for a cable tie of 4.8 mm
ring_body = [26, 14, 27];      // transformer in one piece: width, depth along the wire, height
ring_bore = 11;
ring_bore_at = [13, 14];       // centre of its bore: from the left, from below
split_body = [57, 22, 32];     // split-core transformer, lying
split_bore = 13;
split_bore_at = [16, 16];
burden_body = [32, 16, 15];    // board with the burden and the clamps, what is soldered below it included
burden_ledge = [1.2, 2.5];     // along its long sides: width, height
burden_at = [104, 182];

// --- Low-voltage end: openings in the end wall, and the button with its guard outside ---
panel_y = [64, 94, 122, 152];  // button, lamp, sensor connector (two circuits), console connector
panel_height = 76;             // of their centres above the floor
panel_depth = 32;              // how far what is fitted there reaches into the box, plug and bend of wire included
panel_hole = [16.2, 8.2, 16.2, 16.2];
panel_nut = [22, 14, 22, 22];  // across corners
sounder_at = [236, 76];        // in the long wall beside the console: from the mains end, and height above the floor
sounder_hole = 28.6;
sounder_nut = 36;
sounder_depth = 35;
button_bezel = 20;
button_proud = 6;              // bezel and cap in front of the guard's floor
button_thread = 16;            // length of its thread behind the bezel
button_nut = 3.5;              // thickness, seal not counted
guard_inner = 30;              // room for a fingertip in a glove
guard_wall = 3;
guard_floor = 2.4;
guard_above = 5;               // collar beyond the cap
guard_slot = 10;               // gap in the collar at its lowest place, for dust to fall out

// --- Mains end: cable glands ---
gland_y = [40, 90, 176];       // supply, vacuum, tool
gland_height = 80;             // of their centres above the floor
gland_hole = 25.4;             // M25
gland_nut = 38;                // across corners
gland_depth = 12;              // into the box
gland_clamp = [11, 17];        // diameters of cord that it holds
cord = [13.5, 16];             // heavy cords of three cores, 14 and 12 AWG

// --- Mains end: breaker for equipment between vacuum and tool, only where the sizing program asks for one ---
breaker_at = [133, 80];        // y and height above the floor, lying on its side
breaker_hole = 12.2;
breaker_body = [34, 16, 45];   // across, high, into the box with its covered terminals
breaker_nut = 18;

// --- Sensing head for two circuits: a box of its own, bought, on the tool's cord; nothing bare in it ---
head_inside = [125, 75, 55];

// --- Case of the build without mains wiring, printed; its openings are those of the box's low-voltage end and the sounder's ---
case_inside = [126, 140, 44];
case_wall = 3;
case_column = 9;               // square, in each corner, for the lid's screws
case_screw_hole = 3.4;
case_board_at = [12, 20];      // x, y of the board's corner
case_opening_y = [24, 54, 79, 113]; // button, lamp, console, sounder
case_opening_height = 22;      // of their centres above the floor inside
case_lead_y = [35, 55, 87, 107]; // supply, switching unit, sensors: near their terminals
case_lead_hole = 6;
case_lead_height = 17;
case_rib = [5, 3, 13];         // x, thickness, height: the leads cross it and are tied to it
