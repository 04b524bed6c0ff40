namespace NanoDustSwitch.ConformanceTests.Cost;

internal sealed record Block(int Instructions, Deeds Deeds);
