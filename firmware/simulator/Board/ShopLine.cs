using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The virtual shop as the board sees it, with a person at work in it.</summary>
/// <param name="shop">The shop.</param>
/// <param name="person">The person.</param>
internal sealed class ShopLine(VirtualShop shop, Person person) : Line
{
    /// <inheritdoc/>
    public override int FullScale => shop.Converter.FullScale;

    /// <inheritdoc/>
    public override int MicrovoltsACount => (int)Math.Round(shop.Converter.MicrovoltsPerCount);

    /// <inheritdoc/>
    public override int Read(long now)
    {
        if (now >= person.Due)
        {
            person.Act(now);
        }

        return shop.Read(now);
    }

    /// <inheritdoc/>
    public override void Advance(long now) => shop.Advance(now);

    /// <inheritdoc/>
    public override void SetRelayLine(long now, bool high) => shop.SetRelayLine(now, high);
}
