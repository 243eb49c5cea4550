using System.Globalization;

namespace Academy.Web.Features.Grooms;

/// <summary>The line in which a device says what it kept and could not send yet; whose it is, and how late it is here.</summary>
public sealed record WaitingLine(Guid Me, string Now)
{
    public static WaitingLine Of(Guid me, DateTimeOffset now) => new(me, now.ToString("O", CultureInfo.InvariantCulture));
}
