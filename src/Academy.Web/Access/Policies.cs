using Academy.Competence.People;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Access;

/// <summary>
/// May this sign-in open this page? Each page model names one of these, or <c>[AllowAnonymous]</c>; a page that names nothing
/// opens for nobody. What a person may do to a dog is another question, asked of the rules.
/// </summary>
public static class Policies
{
    /// <summary>Whoever is signed in and works here today.</summary>
    public const string AnyoneHere = nameof(AnyoneHere);

    /// <summary>Studying, logging, one's own skills: a junior's pages, which seniors and owners use as well.</summary>
    public const string Junior = nameof(Junior);

    /// <summary>Judging: seniors and owners.</summary>
    public const string Senior = nameof(Senior);

    /// <summary>Standing down and lifting it: the owner, and deputies that the owner named.</summary>
    public const string Deputy = nameof(Deputy);

    /// <summary>Writing modules: owners, and seniors whom the owner lets.</summary>
    public const string Writer = nameof(Writer);

    /// <summary>Deciding, thresholds, people: owners.</summary>
    public const string Owner = nameof(Owner);

    public static readonly IReadOnlyDictionary<string, Func<Person, bool>> Opens = new Dictionary<string, Func<Person, bool>>(
        StringComparer.Ordinal
    )
    {
        [AnyoneHere] = _ => true,
        [Junior] = _ => true,
        [Senior] = person => person.Role is Role.Senior or Role.Owner,
        [Writer] = person => person.MayWriteModules,
        [Deputy] = person => person.MayStandDown,
        [Owner] = person => person.Role == Role.Owner,
    };

    internal static void Write(AuthorizationOptions rules)
    {
        foreach (var (name, opens) in Opens)
            rules.AddPolicy(name, policy => policy.AddRequirements(new WorksHere(opens)));
        rules.DefaultPolicy = new AuthorizationPolicyBuilder().AddRequirements(new WorksHere(Opens[AnyoneHere])).Build();
        // No page at all is the one thing that may be said to anybody: it ends in 404.
        rules.FallbackPolicy = new AuthorizationPolicyBuilder()
            .RequireAssertion(asked => asked.Resource is HttpContext http && http.GetEndpoint() is null)
            .Build();
    }
}

/// <summary>Asks that the person signed in works here today and that this page opens for her.</summary>
internal sealed record WorksHere(Func<Person, bool> Opens) : IAuthorizationRequirement;

internal sealed class WorksHereAsked(Who who) : AuthorizationHandler<WorksHere>
{
    protected override Task HandleRequirementAsync(AuthorizationHandlerContext context, WorksHere requirement)
    {
        if (who.IsHere && requirement.Opens(who.Person))
            context.Succeed(requirement);
        return Task.CompletedTask;
    }
}
