namespace Academy.Web.Features.OwnSkills;

/// <summary>What the pages of a person's skills are handed.</summary>
public static class SkillsParts
{
    public static IServiceCollection AddOwnSkills(this IServiceCollection services) => services.AddScoped<SkillsQueries>();
}
