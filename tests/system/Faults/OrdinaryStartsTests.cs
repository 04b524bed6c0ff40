namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// The vacuum's own current is never claimed to be what is seen where it is not: ordinary starts with a cut that begins as our
/// relay closes. A few here; the variable DUST_STARTS asks for another number, 30000 is the full one.
/// </summary>
[TestClass]
public sealed class OrdinaryStartsTests
{
    private const int Few = 600;
    private const int InAShop = 3;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void The_wrong_wiring_is_never_claimed_where_it_is_right()
    {
        int wanted = int.TryParse(Environment.GetEnvironmentVariable("DUST_STARTS"), out int number) ? number : Few;
        OrdinaryStarts[] shops = new OrdinaryStarts[(wanted + InAShop - 1) / InAShop];
        Parallel.For(0, shops.Length, i =>
        {
            shops[i] = new OrdinaryStarts(i + 1);
            shops[i].Make(InAShop);
        });
        int starts = shops.Sum(shop => shop.Starts);
        int probes = shops.Sum(shop => shop.Probes);
        int claims = shops.Sum(shop => shop.Claims);
        TestContext.WriteLine(
            $"{starts} starts in {shops.Length} shops, {probes} looks, {claims} claims; "
            + $"95 % bound {3.0 / starts:0.000000} a start");
        Assert.AreEqual(0, claims);
        Assert.IsGreaterThan(starts / 50, probes, "without looks nothing was tried");
    }
}
