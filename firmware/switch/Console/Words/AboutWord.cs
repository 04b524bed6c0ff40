using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says what this device is, and which version.</summary>
public sealed class AboutWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="AboutWord"/> class.</summary>
    public AboutWord()
        : base("about", "about", "what this is")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.Output.Text("nanoDustSwitch ").Text(ProductVersion.Text)
            .Text(", starts a shop vacuum when a tool draws current. MIT licence.").End();
        console.Say("No safety device: it isolates nothing and is no emergency stop.");
    }
}
