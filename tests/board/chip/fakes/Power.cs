using NanoDustSwitch.BoardTests;

namespace nanoFramework.Runtime.Native;

public static class Power
{
    public static void RebootDevice(RebootOption rebootOption = RebootOption.NormalReboot)
    {
        Chip chip = Chip.Current;
        chip.Call("RebootDevice", 10);
        if (rebootOption != RebootOption.NormalReboot)
        {
            chip.Complain("a restart that leaves the pins as they are");
        }

        chip.RebootSoon();
    }
}
