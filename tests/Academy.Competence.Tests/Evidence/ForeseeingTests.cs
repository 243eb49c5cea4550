using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

/// <summary>What a page says before saving is what the log says afterwards.</summary>
public sealed class ForeseeingTests
{
    private static readonly PathOf s_wire = new(Pim.Id, SkillBook.Wire);

    // Twelve wire coats that suited, each on its own day, all before yesterday's groom.
    private static readonly Step[] s_twelve =
    [
        .. Enumerable
            .Range(0, 12)
            .Select(n => new Step(
                Now.AddDays(n - 20),
                Number(400 + n),
                StepKind.Rated,
                Ago(20 - n),
                Verdict: Verdict.Suitable,
                Breed: "Border Terrier",
                Senior: Rosa.Id
            )),
    ];

    [Fact]
    public void A_groom_that_suits_takes_the_row_from_12_to_13()
    {
        var after = SigningOff.Foresee(Met(Pim), Yesterday, Rosa.MayStripWire(), Kinds, Now, London);

        var wire = Foresee(after, s_wire);

        Assert.Equal((12, 13), (wire.Before.Row, wire.After.Row));
        Assert.False(wire.WouldFill);
    }

    [Fact]
    public void A_groom_that_needed_fixing_takes_six_marks_of_a_strict_row()
    {
        var draft = Met(Pim) with { Level = SupportLevel.HandsOn };
        var after = SigningOff.Foresee(draft, Yesterday, Rosa.MayStripWire(), Kinds, Now, London);

        Assert.Equal((12, 6), (Foresee(after, s_wire).Before.Row, Foresee(after, s_wire).After.Row));
    }

    [Fact]
    public void What_is_foreseen_is_what_the_kept_sign_off_then_comes_to()
    {
        var signer = Rosa.MayStripWire();
        var kept = Assert.IsType<Granted>(SigningOff.Decide(Met(Pim), Yesterday, signer, Kinds, Now, London));

        var foreseen = SigningOff.Foresee(Met(Pim), Yesterday, signer, Kinds, Now, London);

        Assert.Equal(Assert.IsType<SignedOff>(Assert.Single(kept.Facts)).SignOff, foreseen.SignOffOf(Pim.Id));
    }

    [Fact]
    public void A_correction_takes_the_old_mark_back_before_it_gives_its_own()
    {
        var signer = Rosa.MayStripWire();
        var signed = SigningOff.Foresee(Met(Pim), Yesterday, signer, Kinds, Now, London);
        var correction = Met(Pim) with
        {
            Id = SignOffNumber(302),
            Level = SupportLevel.TalkedThrough,
            Replaces = SignOffNumber(301),
        };

        var wire = Foresee(SigningOff.Foresee(correction, signed, signer, Kinds, Now, London), s_wire, of: signed);

        Assert.Equal((13, 6), (wire.Before.Row, wire.After.Row));
    }

    [Fact]
    public void A_critical_incident_stops_a_clearance_at_once_and_takes_all_marks()
    {
        var cleared = s_twelve.Append(new Step(Now.AddDays(-3), Number(450), StepKind.Cleared, Ago(3), ThresholdVersion: 1));
        var after = Reporting.Foresee(Burn, Yesterday, Rosa, House, Now);

        var wire = Foresee(after, s_wire, path: [.. cleared]);

        Assert.Equal((true, 0), (wire.WouldStop, wire.After.Row));
        Assert.Contains(s_wire, Foreseeing.Touched(Yesterday, after, London));
    }

    [Fact]
    public void A_near_miss_touches_no_path_at_all()
    {
        var nearly = Burn with { Severity = Severity.NearMiss };

        Assert.Equal([], Foreseeing.Touched(Yesterday, Reporting.Foresee(nearly, Yesterday, Rosa, House, Now), London));
    }

    [Fact]
    public void A_review_that_lays_it_on_nobody_gives_the_marks_back()
    {
        var reported = Reporting.Foresee(Burn, Yesterday, Rosa, House, Now);
        var reviewed = Reporting.Foresee(Burn.Id, reported, Olga, responsible: null, isTechnique: false, Now);

        var wire = Foresee(reviewed, s_wire, of: reported);

        Assert.Equal((0, 12), (wire.Before.Row, wire.After.Row));
        Assert.Equal((1, 0), (wire.Before.OpenReviews, wire.After.OpenReviews));
    }

    [Fact]
    public void A_complaint_upheld_is_one_groom_that_needed_fixing()
    {
        var after = Reporting.ForeseeUpheld(Yesterday, Pim.Id, [SkillBook.HandStripping], Now);

        Assert.Equal(
            [SkillBook.Wire, SkillBook.HandStripping],
            Foreseeing.Touched(Yesterday, after, London).Select(path => path.Skill)
        );
        Assert.Equal(6, Foresee(after, s_wire).After.Row);
    }

    [Fact]
    public void A_late_sign_off_moves_nothing_until_the_owner_lets_it_count()
    {
        var eightDaysOn = StrippingBiscuit.EndedAt.AddDays(8);
        var late = SigningOff.Foresee(Met(Pim), Yesterday, Rosa.MayStripWire(), Kinds, eightDaysOn, London);
        var admitted = Disputing.ForeseeAdmitted(late, late.SignOffOf(Pim.Id)!);

        Assert.Equal(12, Foresee(late, s_wire).After.Row);
        Assert.Equal(13, Foresee(admitted, s_wire).After.Row);
        Assert.Equal(12, Foresee(Disputing.ForeseeOverturned(admitted, late.SignOffOf(Pim.Id)!), s_wire).After.Row);
    }

    private static IncidentDraft Burn =>
        new(
            new IncidentId(Number(501)),
            Pim.Id,
            Now,
            IncidentKind.Burn,
            Severity.Slight,
            BodySite.BackOrSide,
            During: [],
            VetContact.NotNeeded,
            Said("The blade was hot."),
            Said("Cooled at once.")
        );

    // The path as it stands: what came before, and what the groom itself has put on it so far.
    private static Foreseen Foresee(GroomStory after, PathOf asked, GroomStory? of = null, Step[]? path = null)
    {
        var steps = (path ?? s_twelve)
            .Select(step => (Of: asked, Step: step))
            .Concat(Paths.Of(of ?? Yesterday, London).Select(step => (Of: new PathOf(step.Person, step.Skill), step.Step)));
        var paths = steps.ToLookup(one => one.Of, one => one.Step);
        return Assert.Single(Foreseeing.Of(after, paths, [asked], ThresholdOf, Today, London));
    }
}
