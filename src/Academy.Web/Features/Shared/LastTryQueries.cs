using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>The warning before a second failure: which of somebody's skills would pause.</summary>
public sealed class LastTryQueries(Who who, RecordBook records, TimeProvider clock)
{
    /// <summary>Null where the module is not on its last try.</summary>
    public async Task<string?> OfAsync(PersonId person, ModuleFound found, CancellationToken stop)
    {
        if (!found.IsLastTry)
            return null;
        var team = await records.TeamAsync(who.Salon, clock.GetUtcNow(), stop);
        return Say.LastTry([
            .. team.Of(person)
                .Where(standing => standing.LastTries().Contains(found.Module))
                .Select(standing => who.Names.Of(standing.Skill)),
        ]);
    }
}
