using System.Buffers;
using System.Buffers.Binary;
using System.Text;

namespace Academy.Storage.Projections;

/// <summary>Packs values into bytes one after the other, big end first; what is behind them says whether any of them changed.</summary>
internal sealed class BytePacker
{
    private readonly ArrayBufferWriter<byte> _bytes = new(1024);

    public void Small(int number) => Next(1)[0] = checked((byte)number);

    public void Flag(bool isSet) => Small(isSet ? 1 : 0);

    public void Number(int number) => BinaryPrimitives.WriteInt32BigEndian(Next(sizeof(int)), number);

    public void Day(DateOnly? day) => Number(day?.DayNumber ?? ByteUnpacker.NoDay);

    public void Id(Guid id) => id.TryWriteBytes(Next(16), bigEndian: true, out _);

    public void Text(string text)
    {
        var length = Ledgers.Chain.Strict.GetByteCount(text);
        Number(length);
        Ledgers.Chain.Strict.GetBytes(text, Next(length));
    }

    public byte[] Sealed()
    {
        var sum = Checksum.Of(_bytes.WrittenSpan);
        BinaryPrimitives.WriteUInt32BigEndian(Next(Checksum.Bytes), sum);
        return _bytes.WrittenSpan.ToArray();
    }

    private Span<byte> Next(int count)
    {
        var place = _bytes.GetSpan(count)[..count];
        _bytes.Advance(count);
        return place;
    }
}

/// <summary>Takes packed values out again in the same order, and refuses bytes that are not what was packed.</summary>
internal ref struct ByteUnpacker
{
    public const int NoDay = -1;

    private ReadOnlySpan<byte> _left;

    public ByteUnpacker(ReadOnlySpan<byte> packed)
    {
        if (packed.Length < Checksum.Bytes)
            throw Damaged("they end too early");
        _left = packed[..^Checksum.Bytes];
        if (BinaryPrimitives.ReadUInt32BigEndian(packed[^Checksum.Bytes..]) != Checksum.Of(_left))
            throw Damaged("their checksum is not the one that was written");
    }

    public int Small(int below = byte.MaxValue + 1) =>
        Next(1)[0] is var number && number < below
            ? number
            : throw Damaged($"{number} stands where no number may be above {below - 1}");

    public bool Flag() => Small(below: 2) == 1;

    public int Number() => BinaryPrimitives.ReadInt32BigEndian(Next(sizeof(int)));

    public DateOnly? Day()
    {
        var number = Number();
        if (number == NoDay)
            return null;
        return number >= 0 && number <= DateOnly.MaxValue.DayNumber
            ? DateOnly.FromDayNumber(number)
            : throw Damaged($"{number} is no day");
    }

    public DateOnly DayThatIsThere() => Day() ?? throw Damaged("a day is missing");

    public Guid Id() => new(Next(16), bigEndian: true);

    public string Text() => Encoding.UTF8.GetString(Next(Number()));

    public readonly void End()
    {
        if (!_left.IsEmpty)
            throw Damaged($"{_left.Length} bytes are left over");
    }

    public static FormatException Damaged(string why) =>
        new($"The bytes of a tally are damaged: {why}. Fold it again from its steps.");

    private ReadOnlySpan<byte> Next(int count)
    {
        if (count < 0 || count > _left.Length)
            throw Damaged("they end too early");
        var next = _left[..count];
        _left = _left[count..];
        return next;
    }
}

/// <summary>FNV-1a in 32 bits: any one byte that changed gives another sum. It is no seal against somebody who means it.</summary>
/// <remarks>Its basis and prime are from memory; any odd prime would do here.</remarks>
internal static class Checksum
{
    public const int Bytes = sizeof(uint);

    private const uint Basis = 0x811C9DC5;

    private const uint Prime = 0x01000193;

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var sum = Basis;
        foreach (var one in bytes)
            sum = unchecked((sum ^ one) * Prime);
        return sum;
    }
}
