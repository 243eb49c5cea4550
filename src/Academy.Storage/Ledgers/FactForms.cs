using System.Text.Json;
using System.Text.Json.Nodes;
using Academy.Competence.Facts;

namespace Academy.Storage.Ledgers;

/// <summary>
/// How each fact stands in the ledger: under which code, about whom or what, and in which JSON. Used both ways. A code once
/// written stays readable for ever: a fact that changes its shape gets a new code beside the old one.
/// </summary>
public static class FactForms
{
    private static readonly FactForm[] All =
    [
        Form<SalonOpened>("salon.opened"),
        Form<SalonDescribed>("salon.described"),
        Form<HouseRulesSet>("house-rules.set"),
        Form<SkillDescribed>("skill.described"),
        Form<ThresholdSet>("threshold.set"),
        Form<ModuleEditionSeen>("module.edition-seen"),
        Form<ModulePublished>("module.published"),
        Form<ModuleNoted>("module.noted"),
        Form<ModuleNoteTakenBack>("module.note-taken-back"),
        Form<QuestionsJudged>("module.questions-judged"),
        Form<RoomRead>("room.read"),
        Form<PresenceTicked>("presence.ticked"),
        Form<WordsErased>("words.erased"),
        Form<PersonDescribed>("person.described", fact => fact.Person.Value),
        Form<PersonLeft>("person.left", fact => fact.Person.Value),
        Form<PersonCameBack>("person.came-back", fact => fact.Person.Value),
        Form<ExperienceDeclared>("experience.declared", fact => fact.Person.Value),
        Form<WorkElsewhere>("work.elsewhere", fact => fact.Person.Value),
        Form<AttemptHandedIn>("attempt.handed-in", fact => fact.Person.Value),
        Form<ClearanceGiven>("clearance.given", fact => fact.Person.Value),
        Form<ClearanceRefused>("clearance.refused", fact => fact.Person.Value),
        Form<StoodDown>("stand-down.given", fact => fact.Person.Value),
        Form<StandDownLifted>("stand-down.lifted", fact => fact.Person.Value),
        Form<DogDescribed>("dog.described", fact => fact.Dog.Value),
        Form<GroomStarted>("groom.started", fact => fact.Groom.Value),
        Form<GroomAbandoned>("groom.abandoned", fact => fact.Groom.Value),
        Form<GroomLogged>("groom.logged", fact => fact.Groom.Id.Value),
        Form<GroomFlagged>("groom.flagged", fact => fact.Groom.Value),
        Form<FlagSpokenAbout>("groom.flag-spoken-about", fact => fact.Groom.Value),
        Form<SignedOff>("groom.signed-off", fact => fact.SignOff.Groom.Value),
        Form<LateSignOffAdmitted>("groom.late-sign-off-admitted", fact => fact.Groom.Value),
        Form<SignOffDisputed>("groom.sign-off-disputed", fact => fact.Groom.Value),
        Form<DisputeAnswered>("groom.dispute-answered", fact => fact.Groom.Value),
        Form<IncidentReported>("groom.incident-reported", fact => fact.Incident.Groom.Value),
        Form<IncidentReviewed>("groom.incident-reviewed", fact => fact.Groom.Value),
        Form<ComplaintUpheld>("groom.complaint-upheld", fact => fact.Groom.Value),
    ];

    private static readonly Dictionary<Type, FactForm> ByType = All.ToDictionary(form => form.Type);

    private static readonly Dictionary<string, FactForm> ByCode = All.ToDictionary(form => form.Code, StringComparer.Ordinal);

    public static IReadOnlyCollection<FactForm> Known => All;

    public static FactForm Of(Fact fact) =>
        ByType.TryGetValue(fact.GetType(), out var form)
            ? form
            : throw new InvalidOperationException($"The fact {fact.GetType().Name} has no ledger form.");

    public static string CodeOf<T>()
        where T : Fact => ByType[typeof(T)].Code;

    /// <summary>Whether the fact changes the salon's book: people, skills, thresholds, house rules, editions.</summary>
    public static bool IsOfTheBook(Fact fact) => RecordBook.IsOfTheBook(Of(fact).Code);

    /// <summary>The fact as codes, ids and numbers, with the words taken out.</summary>
    public static Spoken Write(Fact fact)
    {
        var data = JsonSerializer.SerializeToNode(fact, fact.GetType(), FactJson.Options)!.AsObject();
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        FactJson.TakeWordsOut(data, path: "", words);
        return new Spoken(data, words);
    }

    /// <summary>The fact again. Words that are not given (they were erased) come back as none.</summary>
    public static Fact Read(string code, JsonObject data, IReadOnlyDictionary<string, string> words)
    {
        if (!ByCode.TryGetValue(code, out var form))
            throw new FormatException($"The ledger holds a fact of the kind {code}, which this version does not know.");
        var whole = data.DeepClone();
        FactJson.PutWordsBack(whole, path: "", words);
        return (Fact)whole.Deserialize(form.Type, FactJson.Options)!;
    }

    private static FactForm Form<T>(string code, Func<T, Guid>? subject = null)
        where T : Fact => new(code, typeof(T), fact => subject?.Invoke((T)fact));
}

/// <param name="Code">Stable; what the ledger calls this kind of fact.</param>
/// <param name="Type">The record.</param>
/// <param name="SubjectOf">The groom, dog or person that the fact belongs to; none for the salon's own.</param>
public sealed record FactForm(string Code, Type Type, Func<Fact, Guid?> SubjectOf)
{
    /// <summary>Whether it is part of one groom's story.</summary>
    public bool IsOfAGroom => Code.StartsWith("groom.", StringComparison.Ordinal);
}

/// <summary>A fact taken apart: what is hashed, and the words beside it by where they stood.</summary>
public sealed record Spoken(JsonObject Data, IReadOnlyDictionary<string, string> Words);
