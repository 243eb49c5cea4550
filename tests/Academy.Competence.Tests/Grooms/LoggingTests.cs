using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.StoryWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Grooms;

public class LoggingTests
{
    [Fact]
    public void A_groom_is_logged_as_it_was_told() =>
        Assert.Equal([new GroomLogged(StrippingBiscuit)], Granted(Log(StrippingBiscuit)));

    [Fact]
    public void The_log_is_never_refused_for_what_somebody_may_not_do() =>
        Assert.Empty(Against(Log(StrippingBiscuit with { Watcher = null, Hazards = [SkillBook.BiteHistory] })));

    // the end, told by a device whose clock may run ahead of the salon's
    [Theory]
    [InlineData(0, true)]
    [InlineData(5, true)] // five minutes are forgiven
    [InlineData(6, false)]
    public void A_groom_cannot_end_in_the_future(int minutesAhead, bool logged)
    {
        var ended = Now.AddMinutes(minutesAhead);

        Assert.Equal(
            logged ? [] : [new InTheFuture(ended)],
            Against(Log(StrippingBiscuit with { StartedAt = Now.AddHours(-1), EndedAt = ended }))
        );
    }

    [Fact]
    public void A_groom_ends_after_it_starts_and_within_a_day()
    {
        var ended = StrippingBiscuit.EndedAt;

        Assert.Equal([new EndsBeforeItStarts()], Against(Log(StrippingBiscuit with { StartedAt = ended.AddMinutes(1) })));
        Assert.Empty(Against(Log(StrippingBiscuit with { StartedAt = ended.AddHours(-24) })));
        Assert.Equal(
            [new LongerThanADay()],
            Against(Log(StrippingBiscuit with { StartedAt = ended.AddHours(-24).AddMinutes(-1) }))
        );
    }

    [Fact]
    public void A_muzzle_that_goes_on_comes_off()
    {
        var (on, pause, off) = (
            Check(WelfareCheck.MuzzleOn, 60),
            Check(WelfareCheck.MuzzleBreak, 50),
            Check(WelfareCheck.MuzzleOff, 40)
        );

        Assert.Equal([new MuzzleNeverOff()], Against(Log(StrippingBiscuit with { Checks = [on] })));
        Assert.Equal([new MuzzleNeverOff()], Against(Log(StrippingBiscuit with { Checks = [on, pause] }))); // a break is not off
        Assert.Equal(
            [new MuzzleNeverOff()],
            Against(Log(StrippingBiscuit with { Checks = [on, off, Check(WelfareCheck.MuzzleOn, 30)] }))
        );
        Assert.Empty(Against(Log(StrippingBiscuit with { Checks = [off, pause, on] }))); // in whatever order it was told
        Assert.Empty(Against(Log(StrippingBiscuit with { Checks = [] })));
    }

    [Fact]
    public void A_coat_is_chosen_and_a_second_one_is_another()
    {
        Assert.Equal([new NoCoatChosen()], Against(Log(StrippingBiscuit with { Coat = default })));
        Assert.Equal([new SameCoatTwice(SkillBook.Wire)], Against(Log(StrippingBiscuit with { SecondCoat = SkillBook.Wire })));
    }

    [Fact]
    public void A_groom_in_which_nothing_was_done_is_none_unless_it_was_broken_off()
    {
        var nothing = StrippingBiscuit with { Parts = [], WholeFinishBy = null };

        Assert.Equal([new NoWorkAgreed()], Against(Log(nothing)));
        Assert.Empty(Against(Log(nothing with { EndedEarly = true, Notes = Said("Panting that did not settle: stopped.") })));
    }

    [Fact]
    public void A_groom_that_ended_early_says_why()
    {
        var early = StrippingBiscuit with { EndedEarly = true };

        Assert.Equal([new WordsNeeded(WordsFor.EndedEarly)], Against(Log(early)));
        Assert.Empty(Against(Log(early with { Phrases = ["dog-had-enough"] })));
        Assert.Empty(Against(Log(early with { Notes = Said("He had enough.") })));
    }

    [Fact]
    public void Nobody_watches_a_groom_of_which_she_did_a_part()
    {
        Assert.Equal([new WatchedByHerself()], Against(Log(StrippingBiscuit with { Watcher = Pim.Id })));
        Assert.Equal(
            [new WatchedByHerself()],
            Against(Log(StrippingBiscuit with { Parts = StrippingBiscuit.Parts.With(new(SkillBook.Nails, Rosa.Id)) }))
        );
    }

    [Fact]
    public void Everything_that_cannot_be_true_is_said_at_once() =>
        Assert.Equal(
            [
                new EndsBeforeItStarts(),
                new MuzzleNeverOff(),
                new NoCoatChosen(),
                new WatchedByHerself(),
                new NotWorkingHere(Gus.Id),
                new NotHerGroom(),
            ],
            Against(
                Log(
                    StrippingBiscuit with
                    {
                        StartedAt = Now,
                        Coat = default,
                        Watcher = Pim.Id,
                        Checks = [Check(WelfareCheck.MuzzleOn, 60)],
                    },
                    by: Gus
                )
            )
        );

    [Fact]
    public void Whoever_logged_a_groom_may_tell_it_again_before_it_is_signed() =>
        Assert.Empty(Against(Log(StrippingBiscuit with { EndedEarly = false }, earlier: Yesterday)));

    [Fact]
    public void Nobody_else_tells_it_again_and_nobody_takes_it_over()
    {
        Assert.Equal([new NotHerGroom()], Against(Log(StrippingBiscuit, earlier: Yesterday, by: Mei)));
        Assert.Equal([new NotHerGroom()], Against(Log(StrippingBiscuit with { By = Mei.Id }, earlier: Yesterday, by: Mei)));
    }

    [Fact]
    public void A_groom_that_is_signed_off_is_not_told_again() =>
        Assert.Equal(
            [new SignedOffAlready()],
            Against(Log(StrippingBiscuit, earlier: Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire())))
        );

    [Fact]
    public void Whoever_worked_here_on_the_day_of_the_groom_may_still_log_it()
    {
        var lastDay = Pim with { LeftOn = Today };

        Assert.Empty(Against(Log(StrippingBiscuit, by: lastDay)));
        Assert.Equal(
            [new NotWorkingHere(Pim.Id)],
            Against(Log(StrippingBiscuit with { StartedAt = Now.AddHours(-1), EndedAt = Now }, by: lastDay))
        );
    }

    [Fact]
    public void A_groom_begins_when_the_dog_is_on_the_table()
    {
        Assert.Equal(
            [new GroomStarted(StrippingBiscuit.Id, Biscuit.Id, Pim.Id, Rosa.Id, Now)],
            Granted(Start(Pim, Rosa.Id, Now))
        );
        Assert.Equal(
            [new NotWorkingHere(Gus.Id), new InTheFuture(Now.AddMinutes(6)), new WatchedByHerself()],
            Against(Start(Gus, Gus.Id, Now.AddMinutes(6)))
        );
    }

    [Fact]
    public void A_groom_that_never_happened_is_taken_away_by_whoever_started_it_or_by_the_owner()
    {
        Assert.Equal(
            [new GroomAbandoned(StrippingBiscuit.Id, Said("Wrong dog."))],
            Granted(Logging.Abandon(StrippingBiscuit.Id, Pim.Id, Pim, Said("Wrong dog.")))
        );
        Assert.Empty(Against(Logging.Abandon(StrippingBiscuit.Id, Pim.Id, Olga, Said("Wrong dog."))));
        Assert.Equal([new NotHerGroom()], Against(Logging.Abandon(StrippingBiscuit.Id, Pim.Id, Rosa, Said("Wrong dog."))));
    }

    [Fact]
    public void A_muzzle_was_worn_where_it_was_put_on_or_recorded_as_a_hazard()
    {
        Assert.False(StrippingBiscuit.WasMuzzled);
        Assert.True((StrippingBiscuit with { Checks = [Check(WelfareCheck.MuzzleOn, 60)] }).WasMuzzled);
        Assert.True((StrippingBiscuit with { Hazards = [SkillBook.Muzzled] }).WasMuzzled);
    }

    private static CheckMade Check(WelfareCheck check, int minutesBeforeTheEnd) =>
        new(check, StrippingBiscuit.EndedAt.AddMinutes(-minutesBeforeTheEnd));

    private static Decision Log(Groom groom, GroomStory? earlier = null, Person? by = null) =>
        Logging.Log(groom, earlier, by ?? Pim, Now, London);

    private static Decision Start(Person by, PersonId? watcher, DateTimeOffset at) =>
        Logging.Start(StrippingBiscuit.Id, Biscuit.Id, by, watcher, at, Now, London);
}
