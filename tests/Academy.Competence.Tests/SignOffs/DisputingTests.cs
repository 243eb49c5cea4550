using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.StoryWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.SignOffs;

public class DisputingTests
{
    private static readonly GroomStory Story = Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire());
    private static readonly SignOff Signed = Story.SignOffs[0];
    private static readonly SignOff SignedLate = Met(Pim)
        .Signed(Yesterday, Rosa.MayStripWire(), Yesterday.Groom.EndedAt.AddDays(8));

    private static readonly DisputeStory Open = new(Signed.Id, Pim.Id, Now, Said("I was not helped."), Answer: null);
    private static readonly DisputeAnswered Stands = new(
        StrippingBiscuit.Id,
        Signed.Id,
        IsOverturned: false,
        OwnerWasJudge: false,
        Said("It stands.")
    );

    [Fact]
    public void A_sign_off_that_was_corrected_is_disputed_no_longer()
    {
        var corrected = Story with
        {
            SignOffs = Story.SignOffs.With(Signed with { Id = SignOffNumber(399), Replaces = Signed.Id }),
        };

        Assert.Equal(
            [new NotTheSignOffInForce()],
            Against(Disputing.Dispute(corrected, Signed, isDisputed: false, Pim, Said("I was not helped.")))
        );
    }

    [Fact]
    public void What_nobody_disputed_is_not_answered()
    {
        var another = Open with { SignOff = SignOffNumber(399) };

        Assert.Equal([new NotDisputed()], Against(Disputing.Answer(Signed, dispute: null, Olga, overturn: true, Said("No."))));
        Assert.Equal([new NotDisputed()], Against(Disputing.Answer(Signed, another, Olga, overturn: true, Said("No."))));
    }

    [Fact]
    public void Whoever_was_judged_may_dispute_it_with_words() =>
        Assert.Equal(
            [new SignOffDisputed(StrippingBiscuit.Id, Signed.Id, Pim.Id, Said("I was not helped."))],
            Granted(Disputing.Dispute(Story, Signed, isDisputed: false, Pim, Said("I was not helped.")))
        );

    [Fact]
    public void Nobody_else_disputes_it_and_nobody_twice_and_nobody_without_words() =>
        Assert.Equal(
            [new NotHerSignOff(), new DisputedAlready(), new WordsNeeded(WordsFor.Dispute)],
            Against(Disputing.Dispute(Story, Signed, isDisputed: true, Mei, Words.None))
        );

    [Fact]
    public void The_owner_answers_and_may_take_the_judgement_back() =>
        Assert.Equal(
            [
                new DisputeAnswered(
                    StrippingBiscuit.Id,
                    Signed.Id,
                    IsOverturned: true,
                    OwnerWasJudge: false,
                    Said("Pim is right.")
                ),
            ],
            Granted(Disputing.Answer(Signed, Open, Olga, overturn: true, Said("Pim is right.")))
        );

    [Fact]
    public void The_record_says_so_when_the_owner_was_the_judge()
    {
        var judgedByOlga = Met(Pim).Signed(Yesterday, Olga.MayStripWire());

        Assert.Equal(
            [new DisputeAnswered(StrippingBiscuit.Id, Signed.Id, IsOverturned: false, OwnerWasJudge: true, Said("It stands."))],
            Granted(Disputing.Answer(judgedByOlga, Open, Olga, overturn: false, Said("It stands.")))
        );
    }

    [Fact]
    public void Only_the_owner_answers_once_and_with_words() =>
        Assert.Equal(
            [new OwnerOnly(), new AnsweredAlready(), new WordsNeeded(WordsFor.Answer)],
            Against(Disputing.Answer(Signed, Open with { Answer = Stands }, Rosa, overturn: true, Words.None))
        );

    [Fact]
    public void A_judgement_taken_back_stays_visible_and_does_not_count()
    {
        var overturned = Story with { Overturned = [Signed.Id] };

        Assert.Equal([Signed], overturned.SignOffs);
        Assert.False(overturned.Counts(Signed));
        Assert.True(Story.Counts(Signed));
    }

    [Fact]
    public void A_judgement_that_was_corrected_does_not_count_beside_its_correction()
    {
        var corrected = Story.SignedOff(
            Met(Pim) with
            {
                Id = SignOffNumber(302),
                Replaces = Signed.Id,
                Why = Said("Slip."),
            },
            Rosa.MayStripWire()
        );

        Assert.False(corrected.Counts(Signed));
        Assert.True(corrected.Counts(corrected.SignOffs[1]));
    }

    [Fact]
    public void The_owner_lets_a_late_sign_off_count_with_a_reason() =>
        Assert.Equal(
            [new LateSignOffAdmitted(StrippingBiscuit.Id, SignedLate.Id, Said("Rosa was ill."))],
            Granted(Disputing.AdmitLate(Yesterday, SignedLate, Olga, Said("Rosa was ill.")))
        );

    [Fact]
    public void Only_the_owner_admits_only_what_was_late_and_only_with_a_reason() =>
        Assert.Equal(
            [new OwnerOnly(), new WasNotLate(), new WordsNeeded(WordsFor.LateCounts)],
            Against(Disputing.AdmitLate(Story, Signed, Rosa, Words.None))
        );

    [Fact]
    public void What_was_admitted_already_is_not_admitted_again() =>
        Assert.Equal(
            [new WasNotLate()],
            Against(Disputing.AdmitLate(Yesterday with { Admitted = [SignedLate.Id] }, SignedLate, Olga, Said("Rosa was ill.")))
        );
}
