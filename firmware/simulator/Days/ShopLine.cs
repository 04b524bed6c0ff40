using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>The virtual shop as the board sees it, with a person at work in it.</summary>
/// <param name="shop">The shop.</param>
/// <param name="person">The person.</param>
internal sealed class ShopLine(VirtualShop shop, Person person) : Line
{
    private long _latest;

    /// <inheritdoc/>
    public override int FullScale => shop.Converter.FullScale;

    /// <inheritdoc/>
    public override int MicrovoltsACount => (int)Math.Round(shop.Converter.MicrovoltsPerCount);

    /// <inheritdoc/>
    public override bool IsPowered => shop.IsBoxPowered;

    /// <inheritdoc/>
    public override int Read(long now)
    {
        LetPersonAct(now);
        return shop.Read(now);
    }

    /// <inheritdoc/>
    public override int ReadVacuumLine(long now) => shop.ReadVacuumLine(now);

    /// <inheritdoc/>
    public override void Advance(long now)
    {
        LetPersonAct(now);
        shop.Advance(now);
    }

    /// <inheritdoc/>
    public override void SetRelayLine(long now, bool high)
    {
        CatchUp(now);
        shop.SetRelayLine(now, high);
    }

    private void LetPersonAct(long now)
    {
        CatchUp(now);
        if (now >= person.Due)
        {
            person.Act(now);
        }

        _latest = now;
    }

    // A step falls together with the reading after it. Where none comes for longer than a bucket, because the board is busy
    // or without power, the person does not wait for it.
    private void CatchUp(long now)
    {
        while (person.Due < now - Bucket.Microseconds)
        {
            _latest = Math.Max(_latest, person.Due);
            person.Act(_latest);
        }
    }
}
