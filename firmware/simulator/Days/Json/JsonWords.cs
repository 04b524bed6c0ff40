using System.Text.Json;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Words of a day file and what they stand for.</summary>
/// <typeparam name="T">What they stand for.</typeparam>
/// <param name="words">The words.</param>
internal sealed class JsonWords<T>(params (string Word, T Value)[] words)
    where T : struct
{
    /// <summary>Gives the word for what it stands for.</summary>
    /// <param name="value">What it stands for.</param>
    /// <returns>The word.</returns>
    public string Word(T value) => words.First(pair => pair.Value.Equals(value)).Word;

    /// <summary>Reads a word.</summary>
    /// <param name="item">The item.</param>
    /// <param name="name">Name of the member it belongs to.</param>
    /// <returns>What it stands for.</returns>
    public T Read(JsonItem item, string name)
    {
        string text = item.Require(JsonTokenType.String, $"'{name}'", "a text").Text;
        foreach ((string word, T value) in words)
        {
            if (word == text)
            {
                return value;
            }
        }

        string allowed = JsonSource.List(words.Select(pair => pair.Word));
        throw item.Error($"'{name}' must be one of {allowed}, not {JsonSource.Quote(text)}");
    }
}
