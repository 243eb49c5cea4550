using Academy.Storage.Accounts;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>One sign-in that is going on: on what, since when, when a page was last seen.</summary>
public sealed record SessionLine(string Key, string Device, string Opened, string Seen, bool IsThis)
{
    internal static SessionLine Of(Session session, string? own, SalonTime time) =>
        new(
            session.Key,
            Say.Capital(session.Device ?? "some device"),
            $"signed in at {time.At(session.OpenedAt)}",
            $"last page {time.Ago(session.LastSeenAt)}",
            session.Key == own
        );
}
