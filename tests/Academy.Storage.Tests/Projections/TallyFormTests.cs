using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Statistics;
using Academy.Storage.Projections;
using CsCheck;

namespace Academy.Storage.Tests.Projections;

public sealed class TallyFormTests
{
    private static readonly Gen<DateOnly> Day = Gen.Int[0, DateOnly.MaxValue.DayNumber].Select(DateOnly.FromDayNumber);

    private static readonly Gen<DateOnly?> MaybeDay = Gen.Select(
        Gen.Bool,
        Day,
        (isThere, day) => isThere ? day : (DateOnly?)null
    );

    private static readonly Gen<string> Breed = Gen.OneOf(
        Gen.OneOf(
            Gen.Const(""),
            Gen.Const("Cockapoo"),
            Gen.Const("Löwchen"),
            Gen.Const("Xoloitzcuintle \U0001F415"),
            Gen.Const("  Wire Fox Terrier ")
        ),
        Gen.String[Gen.Char['\u0020', '\u07FF'], 0, 40]
    );

    private static readonly Gen<PersonId?> Senior = Gen.Int[0, 4]
        .Select(number => number == 0 ? (PersonId?)null : new PersonId(TestSalon.Id(number)));

    private static readonly Gen<RatedGroom> Rated = Gen.Select(
        Gen.Guid,
        Day,
        Breed,
        Senior,
        Gen.Enum<Verdict>(),
        (groom, day, breed, senior, verdict) => new RatedGroom(groom, day, breed, senior, verdict)
    );

    private static readonly Gen<Limits> AnyLimits = Gen.Select(
        MaybeDay,
        Gen.Bool,
        Gen.Int[-1, 120],
        Gen.Bool,
        (until, hot, kg, senior) => new Limits(until, hot, kg < 0 ? null : kg, senior)
    );

    private static readonly Gen<HeldClearance?> Clearance = Gen.Select(
        Gen.Bool,
        Gen.Guid,
        Day,
        AnyLimits,
        Gen.Int,
        Gen.Bool,
        Gen.Bool,
        (isThere, id, on, limits, version, declared, exception) =>
            isThere ? new HeldClearance(id, on, limits, version, declared, exception) : null
    );

    private static readonly Gen<HeldStandDown?> StandDown = Gen.Select(
        Gen.Bool,
        Gen.Guid,
        Day,
        Gen.Bool,
        (isThere, id, on, technique) => isThere ? new HeldStandDown(id, on, technique) : null
    );

    private static readonly Gen<Tally> AnyTally =
        from counts in Gen.Int.Array[10]
        from back in Gen.Enum<WayBack>()
        from days in Gen.Select(MaybeDay, MaybeDay)
        from clearance in Clearance
        from stop in StandDown
        from recent in Day.Array[0, 10]
        from last in Rated.Array[0, 20]
        select new Tally
        {
            Row = counts[0],
            Rated = counts[1],
            Suitable = counts[2],
            RatedOnRow = counts[3],
            RatedSinceCritical = counts[4],
            OpenReviews = counts[5],
            Alarm = counts[6],
            WatchedYet = counts[7],
            SoloSinceClearance = counts[8],
            InspectedSinceClearance = counts[9],
            Back = back,
            LastCriticalOn = days.Item1,
            CheckAgainOn = days.Item2,
            Clearance = clearance,
            StandDown = stop,
            RecentDays = [.. recent],
            Last = [.. last],
        };

    [Fact]
    public void A_tally_reads_back_as_it_was_written() =>
        AnyTally.Sample(tally => TallyForm.Read(TallyForm.Write(tally)) == tally && TallyForm.IsNewest(TallyForm.Write(tally)));

    [Fact]
    public void The_same_tally_has_the_same_bytes() =>
        AnyTally.Sample(tally => TallyForm.Write(tally).AsSpan().SequenceEqual(TallyForm.Write(tally with { })));

    [Fact]
    public void Any_one_byte_that_changed_is_noticed() =>
        Gen.Select(AnyTally, Gen.Int[0, int.MaxValue], Gen.Int[1, 255])
            .Sample(
                (tally, place, change) =>
                {
                    var bytes = TallyForm.Write(tally);
                    bytes[place % bytes.Length] ^= (byte)change;
                    Assert.Throws<FormatException>(() => TallyForm.Read(bytes));
                }
            );

    [Fact]
    public void A_tally_that_was_cut_off_or_grew_is_noticed() =>
        Gen.Select(AnyTally, Gen.Int[0, int.MaxValue])
            .Sample(
                (tally, cut) =>
                {
                    var bytes = TallyForm.Write(tally);
                    Assert.Throws<FormatException>(() => TallyForm.Read(bytes.AsSpan(0, cut % bytes.Length)));
                    Assert.Throws<FormatException>(() => TallyForm.Read([.. bytes, 0]));
                }
            );

    [Fact]
    public void A_tally_takes_less_than_a_kilobyte()
    {
        var grooms = Enumerable
            .Range(0, 20)
            .Select(i => new RatedGroom(
                TestSalon.Id(i),
                new DateOnly(2026, 1, 5),
                $"Wire Fox Terrier {i % 8}",
                TestSalon.Rosa,
                Verdict.Suitable
            ));

        Assert.InRange(TallyForm.Write(Tally.Empty with { Last = [.. grooms] }).Length, 500, 1000);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{\"row\":3}")]
    public void Another_form_is_told_apart(string form) =>
        Assert.False(TallyForm.IsNewest(System.Text.Encoding.UTF8.GetBytes(form)));
}
