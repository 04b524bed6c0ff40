using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The names that a person has given to the core's tools.</summary>
public sealed class ToolNames
{
    /// <summary>Most letters of a name.</summary>
    public const int Most = 20;

    /// <summary>All names, one after the other, filled up with noughts.</summary>
    public readonly byte[] Bytes = new byte[ToolBook.Places * Most];

    /// <summary>The core's tools.</summary>
    public readonly ToolBook Book;

    /// <summary>Initializes a new instance of the <see cref="ToolNames"/> class.</summary>
    /// <param name="book">The core's tools.</param>
    public ToolNames(ToolBook book)
    {
        Book = book;
    }

    /// <summary>Tells whether a character may be part of a name: a letter, a figure, a blank or a dash.</summary>
    /// <param name="c">The character.</param>
    /// <returns>True when it may.</returns>
    public static bool IsGood(char c)
    {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == ' ' || c == '-';
    }

    /// <summary>Writes number and name of a tool, or its number alone.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="place">Its place.</param>
    public void Write(TextOutput output, int place)
    {
        output.Text("tool ").Number(place + 1);
        if (Book[place, ToolFigure.Named] != 0)
        {
            output.Text(" (");
            WriteName(output, place);
            output.Text(")");
        }
    }

    /// <summary>Writes the name of a tool that has one.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="place">Its place.</param>
    /// <returns>How many letters were written.</returns>
    public int WriteName(TextOutput output, int place)
    {
        int count = 0;
        while (count < Most && Book[place, ToolFigure.Named] != 0 && Bytes[(place * Most) + count] != 0)
        {
            output.Byte(Bytes[(place * Most) + count++]);
        }

        return count;
    }

    /// <summary>Finds the tool with a name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>Its place, or -1.</returns>
    public int Find(string name)
    {
        for (int place = 0; place < ToolBook.Places; place++)
        {
            bool isSame = Book[place, ToolFigure.Named] != 0;
            for (int i = 0; isSame && i < Most; i++)
            {
                isSame = Bytes[(place * Most) + i] == (i < name.Length ? (byte)name[i] : 0);
            }

            if (isSame)
            {
                return place;
            }
        }

        return -1;
    }

    /// <summary>Names a tool.</summary>
    /// <param name="place">Its place.</param>
    /// <param name="name">The name, of 1 to <see cref="Most"/> good characters.</param>
    public void Name(int place, string name)
    {
        for (int i = 0; i < Most; i++)
        {
            Bytes[(place * Most) + i] = i < name.Length ? (byte)name[i] : (byte)0;
        }

        Book[place, ToolFigure.Named] = 1;
        Book.Changes++;
    }

    /// <summary>Checks a name that was read from somewhere.</summary>
    /// <param name="place">Its place.</param>
    /// <returns>False when the tool counts as without a name.</returns>
    public bool Check(int place)
    {
        bool isGood = Bytes[place * Most] != 0;
        bool isOver = false;
        for (int i = 0; i < Most; i++)
        {
            byte one = Bytes[(place * Most) + i];
            isOver |= one == 0;
            isGood &= isOver ? one == 0 : IsGood((char)one);
        }

        if (!isGood)
        {
            Book[place, ToolFigure.Named] = 0;
        }

        return isGood;
    }
}
