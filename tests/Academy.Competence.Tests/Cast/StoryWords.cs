using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Cast;

/// <summary>Small words for what was said about a groom after it.</summary>
internal static class StoryWords
{
    /// <summary>A burn that the comb of a hot blade left on Biscuit's belly; Dora reports it today.</summary>
    public static readonly Incident Burn = new(
        new(Number(401)),
        StrippingBiscuit.Id,
        Pim.Id,
        ReportedBy: Dora.Id,
        ReportedAt: Now,
        NoticedAt: Now.AddHours(-1),
        IncidentKind.Burn,
        Severity.Moderate,
        BodySite.BellyOrGroin,
        During: [],
        VetContact.Phoned,
        IsCritical: true,
        Said("A red stripe on the belly."),
        Said("Cooled it, phoned the vet.")
    );

    /// <summary>The sign-off that a draft comes to, signed a moment ago.</summary>
    public static SignOff Signed(this SignOffDraft draft, GroomStory story, Signer by, DateTimeOffset? at = null) =>
        SigningOff.Decide(draft, story, by, Kinds, at ?? Now, London) is Granted { Facts: [SignedOff fact] }
            ? fact.SignOff
            : throw new InvalidOperationException("The cast cannot sign this off.");

    /// <summary>The story with a draft signed off as its next sign-off.</summary>
    public static GroomStory SignedOff(this GroomStory story, SignOffDraft draft, Signer by, DateTimeOffset? at = null) =>
        story with
        {
            SignOffs = story.SignOffs.With(draft.Signed(story, by, at)),
        };

    public static GroomStory With(this GroomStory story, Incident incident, IncidentReview? review = null) =>
        story with
        {
            Incidents = story.Incidents.With(new IncidentStory(incident, review)),
        };

    public static GroomStory Told(this GroomStory story, Func<Groom, Groom> anew) => story with { Groom = anew(story.Groom) };

    public static IncidentReview Found(bool technique, Person? responsible) =>
        new(Burn.Id, Olga.Id, Now.AddHours(2), responsible?.Id, technique, Said("We looked at it together."));

    /// <summary>The draft with what is needed to say "not yet".</summary>
    public static SignOffDraft NotYet(this SignOffDraft draft, Func<Criteria, Criteria> marked) =>
        draft with
        {
            Criteria = marked(draft.Criteria),
            ToJunior = Said("Comb it through to the skin first."),
        };
}
