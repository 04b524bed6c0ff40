using System;

namespace NanoDustSwitch.UnitTests.Sequences;

/// <summary>What holds after every event, whatever came before.</summary>
/// <param name="Words">The promise in a sentence, as the page has it.</param>
/// <param name="IsKept">Judges the switch before the event, the event, and the switch after it.</param>
internal sealed record Promise(string Words, Func<SequencedVacuum, SequenceEvent, SequencedVacuum, bool> IsKept);
