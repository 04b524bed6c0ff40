// A loop that does all that a loop must not do, in methods of its own, and some that it may.
using System;
using System.Threading;

namespace NanoDustSwitch.BadSamples;

public interface ILoopPart
{
    int Look();
}

public abstract class LoopPartBase
{
    public abstract int Turn();
}

public class LoopPart : LoopPartBase, ILoopPart
{
    public int Look()
    {
        return new int[3].Length;
    }

    public override int Turn()
    {
        return new int[4].Length;
    }
}

public struct LoopPlace
{
    public int Row;
}

public class LoopSample
{
    private readonly ILoopPart _part = new LoopPart();
    private readonly LoopPartBase _base = new LoopPart();
    private readonly EventHandler _handler = null;
    private readonly string _text = "made once";
    private string _last;

    public void Step(int number)
    {
        MakesAnObject();
        MakesAnArray(number);
        Boxes(number);
        NamesAText();
        JoinsTexts(number);
        AsksForText(number);
        MakesADelegate();
        CallsADelegate();
        HasAStruct(number);
        Sleeps();
        _part.Look();
        _base.Turn();
        Typed(number);
        Harmless(number);
        Refuses(number);
    }

    // Reached by its address alone.
    public void NotCalled()
    {
        _last = new object() + "!";
    }

    private static object MakesAnObject()
    {
        return new object();
    }

    private static object MakesAnArray(int number)
    {
        return new byte[number];
    }

    private static object Boxes(int number)
    {
        return number;
    }

    private void NamesAText()
    {
        _last = "again and again";
    }

    private void JoinsTexts(int number)
    {
        _last = _last + _text;
    }

    private void AsksForText(int number)
    {
        _last = number.ToString();
    }

    private Action MakesADelegate()
    {
        return NotCalled;
    }

    private void CallsADelegate()
    {
        _handler(this, null);
    }

    private static int HasAStruct(int number)
    {
        LoopPlace place;
        place.Row = number;
        Move(ref place);
        return place.Row;
    }

    private static void Move(ref LoopPlace place)
    {
        place.Row++;
    }

    private static void Sleeps()
    {
        Thread.Sleep(10);
    }

    private void Typed(int number)
    {
        TakesALine(number);
    }

    private void TakesALine(int number)
    {
        _last = new string(new char[number]);
    }

    private int Harmless(int number)
    {
        int length = _text.Length;
        return number < length ? _text[number] : length;
    }

    private static void Refuses(int number)
    {
        if (number < 0)
        {
            throw new ArgumentException("never less than " + number);
        }
    }
}
