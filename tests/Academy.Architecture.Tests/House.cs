using Academy.Competence;
using Academy.Modules;
using Academy.Storage;
using Academy.Storage.Sqlite;
using ArchUnitNET.Domain;
using ArchUnitNET.Domain.Dependencies;
using ArchUnitNET.Loader;
using Assembly = System.Reflection.Assembly;
using Type = System.Type;

namespace Academy.Architecture.Tests;

/// <summary>Something that a type makes use of: another type, and where it is called the member.</summary>
internal sealed record Use(string Type, string Member);

/// <summary>One type of the house with everything it uses, also from within its lambdas, iterators and async bodies.</summary>
/// <param name="Room">Its namespace; a planted offender stands in the room it pretends to be from.</param>
internal sealed record Part(string Name, string Room, Type Type, IReadOnlyList<Use> Uses)
{
    /// <summary>Whether somebody wrote it: neither migrations nor the classes that pages are compiled to.</summary>
    public bool IsWritten => !IsView && !Room.EndsWith(".Migrations", StringComparison.Ordinal);

    /// <summary>Whether it is a page, a layout or a partial as compiled.</summary>
    public bool IsView => Name.StartsWith("Features_", StringComparison.Ordinal);

    public bool IsIn(string room) => Text.IsOrIsBelow(Room, room);

    public override string ToString() => $"{Room}.{Name}";
}

/// <summary>The house as built.</summary>
internal static class House
{
    private const string Plot = "Academy.Architecture.Tests.Planted";

    public static readonly Assembly Competence = typeof(Reason).Assembly;
    public static readonly Assembly Modules = typeof(ModuleLibrary).Assembly;
    public static readonly Assembly Storage = typeof(AcademyDb).Assembly;
    public static readonly Assembly Sqlite = typeof(DatabaseFile).Assembly;
    public static readonly Assembly Web = typeof(Program).Assembly;

    private static readonly Assembly[] s_rooms = [Competence, Modules, Storage, Sqlite, Web];

    private static readonly ArchUnitNET.Domain.Architecture s_built = new ArchLoader()
        .LoadAssemblies([.. s_rooms, typeof(House).Assembly])
        .Build();

    /// <summary>Every type of every room.</summary>
    public static IReadOnlyList<Part> Parts { get; } = [.. s_rooms.SelectMany(room => PartsOf(room, _ => true))];

    private static IReadOnlyList<Part> Offenders { get; } =
    [.. PartsOf(typeof(House).Assembly, type => Text.IsOrIsBelow(type.Namespace ?? "", Plot))];

    /// <summary>The planted offender of this type.</summary>
    public static Part Planted(Type type) => Offenders.Single(part => part.Type == type);

    public static Part Planted<T>() => Planted(typeof(T));

    /// <summary>Every type of a room that somebody wrote; those that the compiler makes of lambdas belong to whoever wrote them.</summary>
    public static IEnumerable<Type> TypesOf(Assembly room) =>
        room.GetTypes().Where(type => !type.FullName!.Contains('<', StringComparison.Ordinal));

    private static IEnumerable<Part> PartsOf(Assembly assembly, Func<Type, bool> wanted)
    {
        var types = TypesOf(assembly).Where(wanted);
        var built = s_built.Types.Where(type => type.Assembly.FullName == assembly.FullName).ToDictionary(type => type.FullName);
        return types.Where(type => built.ContainsKey(type.FullName!)).Select(type => PartOf(type, built[type.FullName!]));
    }

    private static Part PartOf(Type type, IType built) =>
        new(type.Name.Split('`')[0], RoomOf(type), type, [.. built.Dependencies.Select(UseOf).Where(IsNamed).Distinct()]);

    private static string RoomOf(Type type) =>
        (type.Namespace ?? "Academy.Web").Replace(Plot, "Academy", StringComparison.Ordinal);

    private static Use UseOf(ITypeDependency use) =>
        new(use.Target.FullName, use is MethodCallDependency call ? call.TargetMember.FullName : "");

    // Type parameters are written out with the method they belong to; they are no types of anybody's.
    private static bool IsNamed(Use use) => !use.Type.Contains('<', StringComparison.Ordinal);
}
