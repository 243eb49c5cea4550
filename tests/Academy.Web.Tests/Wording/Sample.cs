using System.Reflection;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

/// <summary>A salon to speak of, and every reason there is in every variety.</summary>
internal static class Sample
{
    public static readonly PersonId Ines = new(new Guid("00000000-0000-0000-0000-000000000001"));
    public static readonly PersonId Pim = new(new Guid("00000000-0000-0000-0000-000000000002"));
    public static readonly TimeZoneInfo London = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");

    // Tuesday 21 July 2026, 10:00 in London.
    public static readonly DateTimeOffset Now = new(2026, 7, 21, 9, 0, 0, TimeSpan.Zero);
    public static readonly DateOnly March12 = new(2026, 3, 12);

    public static readonly Names Names = Names.Of(
        new SalonBook
        {
            Name = "The Quiet Comb",
            Zone = London,
            People =
            [
                new Person(Ines, "Ines", Role.Senior, new DateOnly(2020, 1, 6)),
                new Person(Pim, "Pim", Role.Junior, new DateOnly(2026, 2, 2)),
            ],
            Skills = SkillBook.Defaults,
        },
        Now,
        new Dictionary<ModuleName, string> { [new ModuleName("heat-stroke")] = "Heat stroke" }
    );

    public static string Says(this Reason reason) => Say.Reason(reason, Names);

    public static IReadOnlyList<Type> ReasonTypes { get; } =
    [.. typeof(Reason).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Reason)) && !type.IsAbstract)];

    /// <summary>Each reason with every value of its enumerations and yes-or-noes, and with what may be missing both there and missing.</summary>
    public static IEnumerable<Reason> Reasons(Type type)
    {
        var made = type.GetConstructors().Single().GetParameters();
        IEnumerable<object?[]> all =
        [
            [],
        ];
        foreach (var (at, parameter) in made.Index())
        {
            all = [.. all.SelectMany(_ => Values(parameter, at), (before, value) => (object?[])[.. before, value])];
        }

        return all.Select(values => (Reason)Activator.CreateInstance(type, values)!).Where(IsPossible);
    }

    private static bool IsPossible(Reason reason) =>
        reason is not (ModuleLacking { State: ModuleState.Current } or OnTheWayBack { Depth: WayBack.None });

    private static IEnumerable<object?> Values(ParameterInfo parameter, int at)
    {
        var type = Nullable.GetUnderlyingType(parameter.ParameterType);
        return type is null ? Present(parameter.ParameterType, at) : [null, .. Present(type, at)];
    }

    private static IEnumerable<object?> Present(Type type, int at) =>
        type switch
        {
            { IsEnum: true } => Enum.GetValues(type).Cast<object?>(),
            _ when type == typeof(bool) => [true, false],
            _ when type == typeof(int) => [11 + (6 * at)],
            _ when type == typeof(DateOnly) => [March12],
            _ when type == typeof(DateTimeOffset) => [Now.AddHours(-5)],
            _ when type == typeof(PersonId) => [Ines],
            _ when type == typeof(SkillCode) => [SkillBook.FaceScissoring],
            _ when type == typeof(ModuleName) => [new ModuleName("heat-stroke")],
            _ when type == typeof(SignOffId) => [new SignOffId(Guid.Empty)],
            _ when type == typeof(Gap) => [new RowNotFull(11, 17)],
            _ when type == typeof(Listed<PersonId>) => [new Listed<PersonId>([Ines])],
            _ => throw new InvalidOperationException($"Give a sample of {type}."),
        };
}
