namespace Academy.Storage.Rows;

/// <summary>How often a record was told, so that a stale form is noticed.</summary>
public sealed class RecordVersionRow
{
    public Guid SalonId { get; set; }
    public Guid Record { get; set; }
    public long Version { get; set; }
}

/// <summary>A dog as last told, for lists and search.</summary>
public sealed class DogRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public string Name { get; set; } = "";
    public string Breed { get; set; } = "";
    public string Client { get; set; } = "";

    /// <summary>Name, breed and client in lower case without diacritics.</summary>
    public string Search { get; set; } = "";
    public string? Coat { get; set; }
    public bool IsGone { get; set; }

    /// <summary>The whole dog as JSON.</summary>
    public string Told { get; set; } = "";
    public DateTimeOffset? LastGroomAt { get; set; }
}

/// <summary>Where a groom is on its way.</summary>
public enum GroomState
{
    Started,
    Told,
    Abandoned,
}

/// <summary>A groom as last told, for lists.</summary>
public sealed class GroomRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public Guid Dog { get; set; }
    public Guid By { get; set; }
    public Guid? Watcher { get; set; }
    public GroomState State { get; set; }
    public DateTimeOffset StartedAt { get; set; }
    public DateTimeOffset? EndedAt { get; set; }
    public DateTimeOffset RecordedAt { get; set; }
    public string Breed { get; set; } = "";
    public string Coat { get; set; } = "";

    public bool HasIncident { get; set; }
}

/// <summary>One person's part in a groom, for her own list and for what waits for a sign-off.</summary>
public sealed class GroomDoerRow
{
    public Guid SalonId { get; set; }
    public Guid Groom { get; set; }
    public Guid Person { get; set; }
    public DateTimeOffset EndedAt { get; set; }
    public Guid? Watcher { get; set; }

    /// <summary>The sign-off in force; null while it waits (supervised) or is not inspected (alone).</summary>
    public Guid? SignOff { get; set; }
    public Guid? Senior { get; set; }
    public DateTimeOffset? SignedAt { get; set; }

    /// <summary>Signed late, and the owner has not let it count.</summary>
    public bool IsLate { get; set; }

    /// <summary>What the whole groom came to: suitable or not; null while unsigned.</summary>
    public bool? IsSuitable { get; set; }
    public bool IsDisputed { get; set; }
}

/// <summary>An incident or near miss, for the owner's list.</summary>
public sealed class IncidentRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public Guid Groom { get; set; }
    public Guid Person { get; set; }
    public int Kind { get; set; }
    public int Severity { get; set; }
    public bool IsCritical { get; set; }
    public DateTimeOffset ReportedAt { get; set; }
    public DateTimeOffset? ReviewedAt { get; set; }
}

/// <summary>A dispute that the owner has not answered, or has.</summary>
public sealed class DisputeRow
{
    public Guid SalonId { get; set; }
    public Guid SignOff { get; set; }
    public Guid Groom { get; set; }
    public Guid By { get; set; }
    public DateTimeOffset At { get; set; }
    public DateTimeOffset? AnsweredAt { get; set; }
}

/// <summary>A groom told as done alone by somebody who was not alone for it, until it is taken back.</summary>
public sealed class FlagRow
{
    public Guid SalonId { get; set; }
    public Guid Groom { get; set; }
    public Guid Person { get; set; }
    public DateTimeOffset At { get; set; }

    /// <summary>The codes of the skills, with a comma between them.</summary>
    public string Skills { get; set; } = "";
    public DateTimeOffset? SpokenAt { get; set; }
}

/// <summary>A quiz handed in.</summary>
public sealed class AttemptRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public Guid Person { get; set; }
    public string Module { get; set; } = "";
    public int Edition { get; set; }
    public bool IsRefresher { get; set; }
    public DateTimeOffset HandedInAt { get; set; }
    public DateTimeOffset RecordedAt { get; set; }
    public bool HasPassed { get; set; }

    /// <summary>Its entry in the ledger, where the answers are.</summary>
    public long Seq { get; set; }
}

/// <summary>A tick on the list of who is in, or one taken away; the newest of a person and a day counts.</summary>
public sealed class PresenceRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public Guid Person { get; set; }
    public DateOnly Day { get; set; }
    public bool IsIn { get; set; }
    public DateTimeOffset RecordedAt { get; set; }
}

/// <summary>A room reading.</summary>
public sealed class ReadingRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public DateTimeOffset At { get; set; }
    public DateTimeOffset RecordedAt { get; set; }
    public string Room { get; set; } = "";
    public int TenthsC { get; set; }
    public int? HumidityPct { get; set; }
}

/// <summary>One step of somebody's path in one skill, and from when until when it was known so. A cache of the ledger.</summary>
public sealed class StepRow
{
    public Guid SalonId { get; set; }
    public Guid Person { get; set; }
    public string Skill { get; set; } = "";
    public DateTimeOffset At { get; set; }

    /// <summary>The groom, decision or incident that the step comes from.</summary>
    public Guid Source { get; set; }
    public int Kind { get; set; }

    /// <summary>Tells apart steps of one source that were known one after the other, and several of one declaration.</summary>
    public Guid Row { get; set; }
    public DateOnly Day { get; set; }
    public int? Verdict { get; set; }
    public string Breed { get; set; } = "";
    public Guid? Senior { get; set; }

    /// <summary>Limits as JSON; null for every step but a clearance.</summary>
    public string? Limits { get; set; }
    public bool IsException { get; set; }
    public int ThresholdVersion { get; set; }
    public bool IsReviewOpen { get; set; }
    public bool IsTechnique { get; set; }
    public DateTimeOffset KnownFrom { get; set; }
    public DateTimeOffset? KnownUntil { get; set; }
}

/// <summary>The newest tally of one person in one skill, under one version of its threshold. A cache of the steps.</summary>
public sealed class TallyRow
{
    public Guid SalonId { get; set; }
    public Guid Person { get; set; }
    public string Skill { get; set; } = "";
    public int ThresholdVersion { get; set; }
    public DateTimeOffset LastAt { get; set; }
    public Guid LastSource { get; set; }
    public int LastKind { get; set; }

    /// <summary>The tally in its <see cref="Academy.Storage.Projections.TallyForm"/>.</summary>
    public byte[] Tally { get; set; } = [];

    /// <summary>Steps after the resting point.</summary>
    public int StepsSince { get; set; }

    /// <summary>A resting point some steps back, from which the newest part of the path can be folded again. Null until the path is long.</summary>
    public DateTimeOffset? RestAt { get; set; }
    public Guid? RestSource { get; set; }
    public int? RestKind { get; set; }
    public byte[]? RestTally { get; set; }
}

/// <summary>A quiz that somebody began and has not handed in: what was drawn, what was answered so far. Not a fact yet.</summary>
public sealed class SittingRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public Guid Person { get; set; }
    public string Module { get; set; } = "";
    public string ContentHash { get; set; } = "";
    public bool IsRefresher { get; set; }
    public int Seed { get; set; }
    public DateTimeOffset StartedAt { get; set; }
    public Guid? ReadOutBy { get; set; }
    public bool IsCatchUp { get; set; }

    /// <summary>The questions chosen, with commas between; null where the seed alone draws them.</summary>
    public string? Drawn { get; set; }

    /// <summary>Answers so far as JSON: question id to picked places, or to what was typed.</summary>
    public string Answers { get; set; } = "{}";
}

/// <summary>The text of an edition that somebody saw: an old attempt shows it even when the file has changed.</summary>
public sealed class EditionTextRow
{
    public string Module { get; set; } = "";
    public string ContentHash { get; set; } = "";
    public string Source { get; set; } = "";
}

/// <summary>Questions that a judge has judged so far and not given yet. No fact, and nothing rests on it.</summary>
public sealed class JudgingRow
{
    public Guid SalonId { get; set; }
    public Guid Person { get; set; }
    public string Module { get; set; } = "";

    /// <summary>The edition judged; what was said of another one is not carried over.</summary>
    public string ContentHash { get; set; } = "";

    /// <summary>For each question judged its name and the chance in percent: <c>heat-01:70 heat-02:90</c>.</summary>
    public string Chances { get; set; } = "";
}

/// <summary>A module that somebody is writing: not an edition yet, and not a fact.</summary>
public sealed class DraftRow
{
    public Guid SalonId { get; set; }
    public string Module { get; set; } = "";
    public string Text { get; set; } = "";
    public Guid Author { get; set; }
    public DateTimeOffset SavedAt { get; set; }

    /// <summary>Since when somebody else is asked to read it; null while it is being written.</summary>
    public DateTimeOffset? AskedAt { get; set; }

    /// <summary>What changed, in the author's words.</summary>
    public string Change { get; set; } = "";

    /// <summary>Where it is a safety change: the last day on which an older pass still counts.</summary>
    public DateOnly? CatchUpBy { get; set; }

    /// <summary>Who gave it back unpublished, and with which words.</summary>
    public Guid? ReturnedBy { get; set; }
    public string Returned { get; set; } = "";

    /// <summary>Raised by every save, so that two who write at once find out.</summary>
    public long Version { get; set; }
}

/// <summary>A picture of a module that somebody is writing.</summary>
public sealed class DraftPictureRow
{
    public Guid SalonId { get; set; }
    public string Module { get; set; } = "";
    public string File { get; set; } = "";
    public byte[] Bytes { get; set; } = [];
}

/// <summary>A one-time link with which a person chooses her password; only its hash is kept.</summary>
public sealed class InvitationRow
{
    public Guid SalonId { get; set; }
    public Guid Id { get; set; }
    public Guid Person { get; set; }
    public byte[] TokenHash { get; set; } = [];
    public DateTimeOffset MadeAt { get; set; }
    public DateTimeOffset ExpiresAt { get; set; }
    public DateTimeOffset? UsedAt { get; set; }
}

/// <summary>Failed sign-ins of one account or one source, for the growing delay.</summary>
public sealed class SignInFailureRow
{
    public string Key { get; set; } = "";
    public int Count { get; set; }
    public DateTimeOffset LastAt { get; set; }
}

/// <summary>A private address from which somebody's calendar reads what is due.</summary>
public sealed class CalendarAddressRow
{
    public Guid SalonId { get; set; }
    public Guid Person { get; set; }

    /// <summary>SHA-256 of the token: whoever reads the database cannot open the address.</summary>
    public byte[] TokenHash { get; set; } = [];
    public DateTimeOffset MadeAt { get; set; }
}

/// <summary>Where a person stopped reading a module. No fact, and nothing rests on it.</summary>
public sealed class ReadingPlaceRow
{
    public Guid SalonId { get; set; }
    public Guid Person { get; set; }
    public string Module { get; set; } = "";

    /// <summary>The id of the heading.</summary>
    public string Part { get; set; } = "";
    public DateTimeOffset At { get; set; }
}
