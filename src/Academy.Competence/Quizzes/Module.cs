namespace Academy.Competence.Quizzes;

/// <summary>One lesson that a salon studies, in one edition, with everything that its quiz and its standing need.</summary>
/// <remarks>
/// The lesson text itself is not here: a rule never reads it. Two modules with one <see cref="Hash"/> showed the same
/// lesson, the same pictures and the same questions, to the letter.
/// </remarks>
public sealed record Module
{
    /// <summary>The stable short name: small letters, digits and hyphens, such as <c>heat-stroke</c>.</summary>
    public required ModuleName Name { get; init; }

    /// <summary>The title as a person reads it.</summary>
    public required string Title { get; init; }

    /// <summary>One sentence that says what the module is for.</summary>
    public required string Summary { get; init; }

    /// <summary>How long the lesson takes to read, in minutes, without the quiz.</summary>
    public required int Minutes { get; init; }

    /// <summary>The edition, counted from 1.</summary>
    public required int Edition { get; init; }

    /// <summary>The newest edition that changed something a dog or a person can be hurt by, at most <see cref="Edition"/>.</summary>
    /// <remarks>A pass of an older edition than this one no longer counts as knowledge; a pass of this one or a newer one does.</remarks>
    public required int SafetyCriticalSince { get; init; }

    /// <summary>The content hash of the lesson, its quiz and its pictures, in lower-case hexadecimal digits.</summary>
    public required string Hash { get; init; }

    /// <summary>The codes of the skills that ask for this module.</summary>
    public required Listed<SkillCode> Opens { get; init; }

    /// <summary>What somebody can do after studying the module; every question checks one of these.</summary>
    public required Listed<Aim> Aims { get; init; }

    /// <summary>The published sources that the lesson rests on, by the number it cites them with.</summary>
    public required Listed<Source> Sources { get; init; }

    /// <summary>The day on which somebody last compared the whole module with its sources.</summary>
    public required DateOnly ReviewedOn { get; init; }

    /// <summary>The day from which that comparison is due again.</summary>
    public required DateOnly ReviewDueOn { get; init; }

    /// <summary>The longest gap between two refreshers of this module, in days.</summary>
    public required int RefresherDays { get; init; }

    /// <summary>Whether the whole quiz has to be passed again each spring, before the warm days.</summary>
    public bool RenewedEachSpring { get; init; }

    /// <summary>
    /// How many days a salon has to catch up with the newest safety change, counted from when it sees the edition; null where the
    /// author does not say.
    /// </summary>
    /// <remarks>1 to <see cref="Publishing.LongestCatchUp"/>; <see cref="Publishing.UsualCatchUp"/> where it is null.</remarks>
    public int? CatchUpDays { get; init; }

    /// <summary>Every question that a quiz may draw, in the order of the file.</summary>
    public required Listed<Question> Questions { get; init; }
}

/// <summary>One thing that somebody can do after the module.</summary>
/// <param name="Code">The short name that a question refers to.</param>
/// <param name="Text">The aim as a person reads it, beginning with a verb.</param>
public sealed record Aim(string Code, string Text);

/// <summary>One published source.</summary>
/// <param name="Id">The number that the lesson cites it with, counted from 1.</param>
/// <param name="Organisation">Who published it: authors and journal, or an organisation.</param>
/// <param name="Title">The title of the work.</param>
/// <param name="Year">The year of publication.</param>
/// <param name="Link">Where it can be read, an https address.</param>
public sealed record Source(int Id, string Organisation, string Title, int Year, string Link);
