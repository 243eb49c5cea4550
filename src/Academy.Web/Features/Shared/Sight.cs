using Academy.Competence.People;

namespace Academy.Web.Features.Shared;

/// <summary>Whose standings a person may look at: everybody her own, a senior those of juniors, the owner all.</summary>
public static class Sight
{
    public static bool MaySee(this Person viewer, Person subject) =>
        viewer.Id == subject.Id || viewer.Role == Role.Owner || (viewer.Role == Role.Senior && subject.Role == Role.Junior);
}
