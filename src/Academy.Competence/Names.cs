namespace Academy.Competence;

/// <summary>A salon: one place of work, to which every row of its data belongs.</summary>
public readonly record struct SalonId(Guid Value);

/// <summary>A person in one salon. A name is not an id: two people may share one, and one person may change hers.</summary>
public readonly record struct PersonId(Guid Value);

/// <summary>A dog in one salon.</summary>
public readonly record struct DogId(Guid Value);

/// <summary>One groom: one dog, one visit. Made once, on the device that logs it, so that a retry is the same groom.</summary>
public readonly record struct GroomId(Guid Value);

/// <summary>One sign-off of one person's part in one groom.</summary>
public readonly record struct SignOffId(Guid Value);

/// <summary>One incident or near miss.</summary>
public readonly record struct IncidentId(Guid Value);

/// <summary>One decision of the owner; several clearances under one signature share it.</summary>
public readonly record struct DecisionId(Guid Value);

/// <summary>One attempt at one quiz.</summary>
public readonly record struct AttemptId(Guid Value);

/// <summary>One note of a senior to a module.</summary>
public readonly record struct NoteId(Guid Value);

/// <summary>A skill's stable code, such as <c>wool</c> or <c>hand-stripping</c>; its shown name may change, the code never.</summary>
public readonly record struct SkillCode(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}

/// <summary>A module's stable name: the name of its folder.</summary>
public readonly record struct ModuleName(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}

/// <summary>Words that a person typed. They are kept beside the ledger, which holds only a keyed hash of them.</summary>
public readonly record struct Words(string Text)
{
    // No words are no words, however they came about: kept as null, so that a default is equal to them.
    private readonly string? _text = Text is "" ? null : Text;

    /// <summary>The words; empty where nothing was said.</summary>
    public string Text
    {
        get => _text ?? "";
        init => _text = value is "" ? null : value;
    }

    /// <summary>No words.</summary>
    public static readonly Words None = new("");

    /// <summary>Whether nothing was said.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text);
}
