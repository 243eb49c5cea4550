namespace Academy.Web.Access;

/// <summary>
/// How long a sign-in lasts, all of it in this file. On one's own device: 12 hours without a page, 30 days at most, after which
/// the password is asked again (NIST SP 800-63B-4, reauthentication at its first level). On any other: one hour, one working day.
/// </summary>
public sealed record SessionLengths(TimeSpan Idle, TimeSpan Whole)
{
    public static readonly SessionLengths OwnDevice = new(TimeSpan.FromHours(12), TimeSpan.FromDays(30));
    public static readonly SessionLengths Elsewhere = new(TimeSpan.FromHours(1), TimeSpan.FromHours(12));

    /// <summary>A page seen sooner than this after another moves nothing: a write for each page would be waste.</summary>
    public static readonly TimeSpan SeenAgainAfter = TimeSpan.FromMinutes(2);

    public static SessionLengths Of(bool isOwnDevice) => isOwnDevice ? OwnDevice : Elsewhere;

    /// <summary>When a session opened then and seen now ends, if no further page is seen.</summary>
    public DateTimeOffset EndOf(DateTimeOffset openedAt, DateTimeOffset seenAt) =>
        seenAt + Idle < openedAt + Whole ? seenAt + Idle : openedAt + Whole;
}
