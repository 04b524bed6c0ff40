using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>What a current adds to another one, against the law of cosines (textbook).</summary>
[TestClass]
public class SteadyPhasorTests
{
    private const double First = 400;
    private const double Second = 150;
    private const int BucketsARead = 10;
    private const int LooksBefore = 12;

    // The angle of the mains at each bucket is the same for both currents, and the second one lags.
    [TestMethod]
    [DataRow(50.0, 0)]
    [DataRow(50.0, 60)]
    [DataRow(49.5, 90)]
    [DataRow(60.0, 0)]
    [DataRow(60.3, 45)]
    [DataRow(59.6, 75)]
    public void WhatComesAndGoesShowsWhateverItsPhase(double hertz, int degrees)
    {
        var line = new SteadyPhasor();
        var window = new SwingWindow();
        var bucket = 0;
        Look(line, window, hertz, First, 0, ref bucket);
        line.Begin();
        for (var look = 0; look < LooksBefore; look++)
        {
            Look(line, window, hertz, First, 0, ref bucket);
            if (line.Weigh())
            {
                Assert.IsTrue(line.IsSame, $"look {look}");
                line.Follow();
            }
        }

        // The look during which it comes holds some of both; it is not taken.
        for (var look = 0; look < 3; look++)
        {
            Look(line, window, hertz, First, Second, ref bucket, degrees);
            Assert.IsTrue(line.Weigh());
            Assert.IsFalse(line.IsSame);
        }

        Assert.IsTrue(line.IsSteady);
        Assert.IsTrue(line.IsMore);
        Assert.IsTrue(line.IsSharp);
        var angle = double.DegreesToRadians(degrees);
        var both = Math.Sqrt((First * First) + (Second * Second) + (2 * First * Second * Math.Cos(angle)));
        const int Unit = 1000;
        var swing = (int)(both * Unit / First);
        Assert.AreEqual(Unit, line.Carried(swing), 0.03 * Unit);
        Assert.AreEqual(Second / First * Unit, line.Difference(swing), 0.03 * Unit);

        // What is on the line now lags behind what is carried on by an angle whose sine is Second · sin(angle) / both.
        var lead = -Math.Sin(angle) * Second / both;
        Assert.AreEqual(lead, line.Lead(swing) / ((double)Unit * swing), 0.03);
    }

    // It is less than what is the same on a line where nothing has come.
    [TestMethod]
    public void ASmallOneThatGoesFromBesideAGreatOneIsSeen()
    {
        const double Small = 25;
        var line = new SteadyPhasor();
        var window = new SwingWindow();
        var bucket = 0;
        Begin(line, window, Small, ref bucket);
        for (var look = 0; look < 3; look++)
        {
            Look(line, window, 50, Small, First, ref bucket);
            line.Weigh();
        }

        line.Watch(true);
        line.Take();
        Look(line, window, 50, Small, First, ref bucket);
        line.Weigh();
        Assert.IsTrue(line.IsSame);
        for (var look = 0; look < 2; look++)
        {
            Look(line, window, 50, 0, First, ref bucket);
            line.Weigh();
        }

        Assert.IsFalse(line.IsSame);
        Assert.IsFalse(line.IsMore);
    }

    [TestMethod]
    public void ASlowChangeIsNotSharp()
    {
        var line = new SteadyPhasor();
        var window = new SwingWindow();
        var bucket = 0;
        Begin(line, window, First, ref bucket);
        for (var look = 1; look <= 8; look++)
        {
            Look(line, window, 50, First + (look * First / 16), 0, ref bucket);
            line.Weigh();
        }

        Assert.IsTrue(line.IsSteady);
        Assert.IsFalse(line.IsSame);
        Assert.IsFalse(line.IsSharp);
    }

    private static void Begin(SteadyPhasor line, SwingWindow window, double first, ref int bucket)
    {
        Look(line, window, 50, first, 0, ref bucket);
        line.Begin();
        for (var look = 0; look < LooksBefore; look++)
        {
            Look(line, window, 50, first, 0, ref bucket);
            if (line.Weigh())
            {
                line.Follow();
            }
        }
    }

    private static void Look(
        SteadyPhasor line, SwingWindow window, double hertz, double first, double second, ref int bucket, int degrees = 0)
    {
        for (var read = 0; read < SteadyPhasor.Reads; read++)
        {
            for (var i = 0; i < BucketsARead; i++)
            {
                var turn = 2 * Math.PI * hertz * bucket++ * Bucket.Microseconds * 1e-6;
                var mean = (first * Math.Cos(turn)) + (second * Math.Cos(turn - double.DegreesToRadians(degrees)));
                window.Add((int)Math.Round(100 * (2000 + mean)), 100);
            }

            line.Read(window);
        }

        line.Look();
    }
}
