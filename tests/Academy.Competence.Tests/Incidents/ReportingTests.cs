using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.StoryWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Incidents;

public class ReportingTests
{
    private static readonly IncidentDraft ABurn = new(
        Burn.Id,
        Pim.Id,
        Burn.NoticedAt,
        IncidentKind.Burn,
        Severity.Moderate,
        BodySite.BellyOrGroin,
        During: [],
        VetContact.Phoned,
        Burn.WhatHappened,
        Burn.WhatWasDone
    );

    [Fact]
    public void Anyone_may_report_on_any_groom() =>
        Assert.Equal([new IncidentReported(Burn)], Granted(Reporting.Report(ABurn, StrippingBiscuit, Dora, House, Now)));

    [Fact]
    public void A_report_days_later_is_as_good() =>
        Assert.Equal(
            [new IncidentReported(Burn with { ReportedBy = Mei.Id, ReportedAt = Now.AddDays(9) })],
            Granted(Reporting.Report(ABurn, StrippingBiscuit, Mei, House, Now.AddDays(9)))
        );

    [Fact]
    public void A_report_names_somebody_who_groomed_the_dog_a_time_that_has_been_and_what_happened() =>
        Assert.Equal(
            [new DidNoPart(Mei.Id), new InTheFuture(Now.AddMinutes(6)), new WordsNeeded(WordsFor.Incident)],
            Against(
                Reporting.Report(
                    ABurn with
                    {
                        Person = Mei.Id,
                        NoticedAt = Now.AddMinutes(6),
                        WhatHappened = Words.None,
                    },
                    StrippingBiscuit,
                    Dora,
                    House,
                    Now
                )
            )
        );

    [Fact]
    public void The_owners_list_of_the_day_of_the_report_says_whether_it_is_critical()
    {
        var mild = House with { CriticalKinds = [] };

        Assert.False(Critical(ABurn, mild));
        Assert.True(Critical(ABurn, House));
        Assert.True(Critical(ABurn with { Severity = Severity.Serious }, mild)); // what a vet had to treat is always critical
        Assert.False(Critical(ABurn with { Severity = Severity.NearMiss }, House)); // what harmed nobody never is
    }

    [Fact]
    public void The_owner_reviews_who_was_responsible_and_whether_technique_contributed() =>
        Assert.Equal(
            [new IncidentReviewed(StrippingBiscuit.Id, Found(technique: true, Pim))],
            Granted(
                Reporting.Review(
                    new(Burn, Review: null),
                    Olga,
                    Pim.Id,
                    isTechnique: true,
                    Said("We looked at it together."),
                    Now.AddHours(2)
                )
            )
        );

    [Fact]
    public void Only_the_owner_reviews_once_and_in_words() =>
        Assert.Equal(
            [new OwnerOnly(), new ReviewedAlready(), new WordsNeeded(WordsFor.Review)],
            Against(Reporting.Review(new(Burn, Found(technique: false, Pim)), Rosa, Pim.Id, isTechnique: false, Words.None, Now))
        );

    [Fact]
    public void Until_the_review_the_groomer_answers_and_after_it_whom_it_names()
    {
        Assert.Equal(Pim.Id, new IncidentStory(Burn, Review: null).Concerned);
        Assert.Equal(Rosa.Id, new IncidentStory(Burn, Found(technique: false, Rosa)).Concerned);
        Assert.Null(new IncidentStory(Burn, Found(technique: false, responsible: null)).Concerned);
    }

    [Fact]
    public void The_owner_upholds_a_complaint_in_the_coats_and_the_techniques_named() =>
        Assert.Equal(
            [new ComplaintUpheld(StrippingBiscuit.Id, Pim.Id, [SkillBook.Wire, SkillBook.HandStripping], Said("Patchy."))],
            Granted(Reporting.UpholdComplaint(StrippingBiscuit, Pim.Id, [SkillBook.HandStripping], Olga, Said("Patchy.")))
        );

    [Fact]
    public void A_complaint_about_whoever_only_did_a_part_is_about_that_part()
    {
        var shared = StrippingBiscuit with { Parts = StrippingBiscuit.Parts.With(new(SkillBook.Nails, Mei.Id)) };

        Assert.Equal([SkillBook.Nails], Upheld(shared, [SkillBook.Nails]));
        Assert.Equal([SkillBook.Nails], Upheld(shared, [])); // nothing named: all that she did
        Assert.Equal([SkillBook.Nails], Upheld(shared, [SkillBook.Bath])); // what another did is not hers

        static Listed<SkillCode> Upheld(Groom groom, Listed<SkillCode> named) =>
            Assert
                .IsType<ComplaintUpheld>(
                    Assert.Single(Granted(Reporting.UpholdComplaint(groom, Mei.Id, named, Olga, Said("Too short."))))
                )
                .Skills;
    }

    [Fact]
    public void Only_the_owner_upholds_a_complaint_against_somebody_who_groomed_the_dog_and_in_words() =>
        Assert.Equal(
            [new OwnerOnly(), new DidNoPart(Mei.Id), new WordsNeeded(WordsFor.Incident)],
            Against(Reporting.UpholdComplaint(StrippingBiscuit, Mei.Id, [], Rosa, Words.None))
        );

    private static bool Critical(IncidentDraft draft, HouseRules house) =>
        Assert
            .IsType<IncidentReported>(Assert.Single(Granted(Reporting.Report(draft, StrippingBiscuit, Dora, house, Now))))
            .Incident.IsCritical;
}
