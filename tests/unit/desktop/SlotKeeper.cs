using System;
using System.Collections.Generic;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>An owner of two slots whose every field holds the number of a generation, so that a mix of two cannot hide.</summary>
internal sealed class SlotKeeper
{
    private readonly int _first;
    private readonly FakeBoard _board = new FakeBoard();

    private SlotKeeper(int first)
    {
        _first = first;
    }

    public bool IsFull
    {
        get { return _board.SlotWritesThrow; }
        set { _board.SlotWritesThrow = value; }
    }

    /// <summary>Makes one whose slots are empty (0), torn (-1), or hold generation 1 or 2, 2 being the newer.</summary>
    public static SlotKeeper In(int first, int slot0, int slot1)
    {
        // Generations 1 and 2 in the one order of slots or in the other.
        SlotKeeper keeper = new SlotKeeper(first);
        keeper.Write(1);
        if (slot0 == 1 || slot1 == 2)
        {
            keeper.Write(1);
        }

        if (slot0 == 2 || slot1 == 2)
        {
            keeper.Write(2);
        }

        keeper.Spoil(0, slot0);
        keeper.Spoil(1, slot1);
        return keeper;
    }

    public static byte[] Framed(byte[] bytes, int version, int more)
    {
        int end = bytes.Length - 4;
        byte[] framed = new byte[bytes.Length + more];
        Array.Copy(bytes, framed, end);
        LittleEndian.Write(framed, 4, ((end - SlotPair.Head + more) << 16) | version);
        LittleEndian.Write(framed, end + more, (int)Crc32.Of(framed, end + more));
        return framed;
    }

    public SlotKeeper Copy()
    {
        SlotKeeper copy = new SlotKeeper(_first);
        copy.Put(0, Bytes(0));
        copy.Put(1, Bytes(1));
        return copy;
    }

    public byte[] Bytes(int slot)
    {
        byte[] bytes = new byte[_board.SlotLengths[_first + slot]];
        Array.Copy(_board.SlotBytes[_first + slot] ?? bytes, bytes, bytes.Length);
        return bytes;
    }

    public void Put(int slot, byte[] bytes)
    {
        _board.SlotBytes[_first + slot] = (byte[])bytes.Clone();
        _board.SlotLengths[_first + slot] = bytes.Length;
    }

    /// <summary>The slots that a write has changed, in the order of their sequence numbers.</summary>
    public List<int> OrderOfWrites(SlotKeeper after)
    {
        List<int> slots = new List<int>();
        for (int slot = 0; slot < 2; slot++)
        {
            if (!Bytes(slot).AsSpan().SequenceEqual(after.Bytes(slot)))
            {
                slots.Add(slot);
            }
        }

        slots.Sort((a, b) => LittleEndian.Read(after.Bytes(a), 8).CompareTo(LittleEndian.Read(after.Bytes(b), 8)));
        Assert.IsNotEmpty(slots);
        return slots;
    }

    /// <summary>The power comes, what there is is read, and a generation is written.</summary>
    public bool Write(int generation)
    {
        SafeBoard board = new SafeBoard(_board);
        switch (_first)
        {
            case Slots.Settings:
                SettingsStore settings = new SettingsStore(board, Drafts.Gate());
                settings.Load(new SettingValues());
                return settings.Save(Values(generation));
            case Slots.Hours:
                RunHours hours = new RunHours(board);
                hours.Load();
                hours.Seconds = generation;
                hours.FilterSeconds = generation;
                hours.Starts = generation;
                return hours.Save();
            case Slots.Tools:
                VacuumControl vacuum = new VacuumControl(new SettingValues().ToCore(), new NoticeQueue());
                KnownTools tools = new KnownTools(board, vacuum.Book, new SettingValues());
                tools.Load(1);
                Fill(vacuum.Book, tools.Names, generation);
                return tools.Save();
            case Slots.Log:
                EventLog log = new EventLog(board);
                log.Load();
                for (int i = 0; i < EventLog.Length; i++)
                {
                    log.Add().Figure = generation;
                }

                return log.Save();
            default:
                return WriteBoot(board, generation);
        }
    }

    /// <summary>The power comes: which generation is read, 0 for none, -2 for a mix.</summary>
    public int Read()
    {
        byte[] slot0 = Bytes(0);
        byte[] slot1 = Bytes(1);
        SafeBoard board = new SafeBoard(_board);
        switch (_first)
        {
            case Slots.Settings:
                SettingValues values = new SettingValues();
                bool isFound = new SettingsStore(board, Drafts.Gate()).Load(values);
                int generation = isFound ? (values[SettingId.RunOn] / 1000) - 10 : 0;
                return values.Differences(isFound ? Values(generation) : new SettingValues()) == 0 ? generation : -2;
            case Slots.Hours:
                RunHours hours = new RunHours(board);
                hours.Load();
                return hours.Seconds == hours.FilterSeconds && hours.Seconds == hours.Starts ? hours.Seconds : -2;
            case Slots.Tools:
                return ReadTools(board);
            case Slots.Log:
                return ReadLog(board);
            default:
                BootRecord boot = new BootRecord(board);
                boot.Begin();

                // Where there was none it has counted this boot and written that.
                Put(0, slot0);
                Put(1, slot1);
                int restarts = Math.Max(0, boot.Restarts - BootRecord.MostRestarts);
                return restarts == boot.Lockouts && boot.Number == restarts + 1 ? restarts : -2;
        }
    }

    private static int ReadTools(SafeBoard board)
    {
        VacuumControl vacuum = new VacuumControl(new SettingValues().ToCore(), new NoticeQueue());
        KnownTools tools = new KnownTools(board, vacuum.Book, new SettingValues());
        tools.Load(1);
        int generation = vacuum.Book[0, ToolFigure.Height];
        VacuumControl written = new VacuumControl(new SettingValues().ToCore(), new NoticeQueue());
        ToolNames names = new ToolNames(written.Book);
        if (generation > 0)
        {
            Fill(written.Book, names, generation);
        }

        bool isSame = vacuum.Book.Numbers.AsSpan().SequenceEqual(written.Book.Numbers)
            && tools.Names.Bytes.AsSpan().SequenceEqual(names.Bytes);
        return isSame ? generation : -2;
    }

    // Tools that can be, with a name, of one generation.
    private static void Fill(ToolBook book, ToolNames names, int generation)
    {
        for (int place = 0; place < ToolBook.Places; place++)
        {
            for (int figure = 0; figure < ToolBook.Figures; figure++)
            {
                book[place, (ToolFigure)figure] = 1;
            }

            book[place, ToolFigure.Height] = generation;
            book[place, ToolFigure.Most] = generation;
            book[place, ToolFigure.Seconds] = generation;
            names.Name(place, "saw " + generation);
        }
    }

    private static int ReadLog(SafeBoard board)
    {
        EventLog log = new EventLog(board);
        log.Load();
        int generation = log.Count == 0 ? 0 : log.At(0).Figure;
        for (int i = 0; i < log.Count; i++)
        {
            if (log.At(i).Figure != generation)
            {
                return -2;
            }
        }

        return log.Count == 0 || log.Count == EventLog.Length ? generation : -2;
    }

    private bool WriteBoot(SafeBoard board, int generation)
    {
        // Its own write when the board comes up is left out here.
        bool isFull = IsFull;
        IsFull = true;
        BootRecord boot = new BootRecord(board);
        boot.Begin();
        IsFull = isFull;
        boot.Number = generation;
        boot.Restarts = generation + BootRecord.MostRestarts;
        boot.Lockouts = generation;
        int troubles = board.FlashTroubles;
        boot.Write(BootReason.Asked);
        return board.FlashTroubles == troubles;
    }

    // Every setting differs from generation to generation, but for those that have no room for it.
    private static SettingValues Values(int generation)
    {
        SettingsDraft values = Drafts.New();
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            Setting row = SettingsTable.Row((SettingId)i);
            int value = row.Least + generation;
            values[(SettingId)i] = row.Allows(value) ? value : row.Least;
        }

        values[SettingId.RunOn] = (generation + 10) * 1000;
        values[SettingId.StartAt] = 1000 + generation;
        values[SettingId.StopBelow] = 500 + generation;
        return Drafts.Checked(values);
    }

    private void Spoil(int slot, int state)
    {
        if (state <= 0)
        {
            Put(slot, Bytes(slot).AsSpan(0, state == 0 ? 0 : 9).ToArray());
        }
    }
}
