namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>Forks a day before a call, lets the call go wrong, and sees what comes of it.</summary>
/// <param name="survey">The day without trouble.</param>
internal sealed class Injector(Survey survey)
{
    /// <summary>Tries cases, on all cores.</summary>
    /// <param name="cases">The cases in order of time.</param>
    /// <param name="tally">Where the verdicts go.</param>
    public void Run(IReadOnlyList<InjectionCase> cases, InjectionTally tally)
    {
        int workers = Environment.ProcessorCount;
        Parallel.For(0, workers, worker =>
        {
            InjectedRig rig = new(survey.Day);
            int step = 0;
            for (int i = worker; i < cases.Count; i += workers)
            {
                for (; step < cases[i].Step; step++)
                {
                    rig.Step();
                    rig.TakeSaid();
                }

                Trial trial = new(survey, DeepCopy.Of(rig), cases[i]);
                tally.Add(survey.Day.Name, cases[i], trial.Run(), trial.FalseOff);
            }
        });
    }
}
