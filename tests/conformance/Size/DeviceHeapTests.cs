namespace NanoDustSwitch.ConformanceTests.Size;

/// <summary>
/// The walk counts as the device's heap does: blocks of 12 bytes, one for an object and one for each of its fields.
/// </summary>
[TestClass]
public class DeviceHeapTests
{
    private static readonly byte[] s_shared = new byte[4];

    [TestMethod]
    public void AnObjectTakesABlockAndOneAField() => AssertBytes(new Leaf(), nameof(Leaf), 12 + (3 * 12));

    [TestMethod]
    public void TheFieldsOfABaseClassCount() => AssertBytes(new Branch(), nameof(Branch), 12 + (5 * 12));

    [TestMethod]
    [DataRow(typeof(byte), 4, 24)]
    [DataRow(typeof(byte), 5, 36)]
    [DataRow(typeof(bool), 16, 36)]
    [DataRow(typeof(char), 8, 36)]
    [DataRow(typeof(int), 64, 276)]
    [DataRow(typeof(long), 320, 2580)]
    [DataRow(typeof(DayOfWeek), 1, 24)]
    [DataRow(typeof(object), 3, 60)]
    public void AnArrayTakesItsElements(Type element, int length, int bytes) =>
        AssertBytes(Array.CreateInstance(element, length), "arrays", bytes);

    [TestMethod]
    public void ATextOfTheCodeIsABlockWhereverItIsKept() => AssertBytes(new[] { "same", "same" }, "texts", 2 * 12);

    [TestMethod]
    public void ATextThatWasMadeHoldsItsBytes() => AssertBytes(new string('x', 12), "texts", 36);

    [TestMethod]
    public void WhatIsReachedTwiceCountsOnce() => AssertBytes(new[] { s_shared, s_shared }, "arrays", 48 + 24);

    [TestMethod]
    public void ACircleEnds()
    {
        var branch = new Branch();
        branch.Next = branch;
        AssertBytes(branch, nameof(Branch), 12 + (5 * 12));
    }

    [TestMethod]
    public void WhatIsNotOursIsCountedApart()
    {
        var heap = new DeviceHeap(IsOurs);
        heap.Add(new Branch { Next = new Version(1, 2) });
        Assert.AreEqual(1, heap.LibraryObjects);
        Assert.AreEqual(12 + (5 * 12) + 12, heap.Total);
    }

    [TestMethod]
    public void WhatIsNotKnownIsNotGuessed()
    {
        Assert.ThrowsExactly<NotSupportedException>(
            () => new DeviceHeap(IsOurs).Add(new Branch { Next = new Action(ACircleEnds) }));
        Assert.ThrowsExactly<NotSupportedException>(() => new DeviceHeap(IsOurs).Add(new Odd()));
    }

    private static void AssertBytes(object root, string what, int bytes)
    {
        var heap = new DeviceHeap(IsOurs);
        heap.Add(root);
        Assert.AreEqual(bytes, heap.Bytes[what]);
    }

    private static bool IsOurs(Type type) => type.Assembly == typeof(DeviceHeapTests).Assembly;

    private class Leaf
    {
        public int Number = 1;
        public long Large = 2;
        public bool IsSmall = true;
    }

    private sealed class Branch : Leaf
    {
        public object? Next;
        public object Nothing = "";
    }

    private sealed class Odd
    {
        public DateTimeOffset When = DateTimeOffset.UnixEpoch;
    }
}
