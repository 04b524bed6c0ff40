using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>Brings a fault up in the shop, and waits until it stands.</summary>
internal static class FaultCase
{
    private const double Patience = 30;

    /// <summary>Brings it up.</summary>
    /// <param name="bench">The shop and the box.</param>
    /// <param name="fault">The fault.</param>
    public static void Bring(Workbench bench, Fault fault)
    {
        VirtualShop shop = bench.Shop;
        switch (fault)
        {
            case Fault.SensorAtRail:
                bench.Do("/sensor out");
                break;
            case Fault.MidpointOut:
                shop.Sensor.RestMillivolts = 720;
                break;
            case Fault.SensorFrozen:
                shop.Converter.IsFrozen = true;
                break;
            case Fault.ConverterFails:
            case Fault.NoWindow:
                shop.Converter.IsFailing = true;
                break;
            case Fault.Noisy:
                // Little by little, as it must come for the floor to follow it.
                for (double noise = 0.15; noise < 1.6 && !bench.Switch.Core.Faults[fault].IsActive; noise += 0.03)
                {
                    shop.Sensor.NoiseAmperes = noise;
                    bench.Run(15);
                }

                // At the cap it would come and go.
                shop.Sensor.NoiseAmperes *= 1.3;
                bench.Run(15);
                break;
            case Fault.OverRange:
                bench.Tool("table saw", 45).Start(bench.Board.ShopTime);
                break;
            case Fault.ShortCycling:
                bench.Type("starts-a-minute 1");
                bench.Use(bench.Tool("table saw", 8), 2);
                break;
            case Fault.RanTooLong:
                bench.Type("longest-run 20 min");
                bench.Do("/run table saw");
                bench.Run(1190);
                break;
            case Fault.VacuumIdle:
                bench.Type("vacuum-turns 1");
                bench.Do("/vacuum out");
                bench.Do("/run table saw");
                break;
            case Fault.VacuumStays:
                bench.Type("vacuum-turns 1");
                bench.Do("/relay weld");
                bench.Type("vacuum on");
                bench.Run(1);
                bench.Type("vacuum off");
                break;
            case Fault.OwnCurrent:
                bench.Do("/wiring wrong");
                bench.Do("/run router");
                bench.Run(3);
                bench.Type("vacuum off");
                bench.Do("/stop router");
                bench.Run(1);
                bench.Do("/run router");
                bench.Run(3);
                bench.Do("/stop router");
                break;
            case Fault.HeartbeatLost:
                // Pauses of a board in the shop come by chance, with what is typed.
                for (int i = 0; i <= DetectionCore.MostLostAnHour; i++)
                {
                    bench.Switch.Core.LoseRelay(160 + i, bench.Switch.Now);
                }

                break;
            case Fault.SlowBoard:
                // Only a board with a time of its own can be slow: SlowBoardTests.
                bench.Switch.Core.Faults.See(fault, 480, bench.Switch.Now);
                break;
            case Fault.ClockStands:
            case Fault.SettingsLost:
            case Fault.RestartLoop:
            case Fault.RelayLine:
                // The shop cannot do these, or takes hours. Other tests show what raises them: SwitchTests, BootRecordTests, the
                // board's tests.
                bench.Switch.Core.Faults.See(fault, fault == Fault.RestartLoop ? 3 : 0, bench.Switch.Now);
                break;
            default:
                Assert.Fail($"tests/system/Faults/FaultCase.cs has no recipe for Fault.{fault}");
                break;
        }

        for (double waited = 0; waited < Patience && !bench.Switch.Core.Faults[fault].IsActive; waited += 0.01)
        {
            bench.Run(0.01);
        }

        Assert.IsTrue(bench.Switch.Core.Faults[fault].IsActive, $"{fault} does not come up");
    }
}
