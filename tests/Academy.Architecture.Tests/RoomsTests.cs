using System.Reflection;
using System.Runtime.CompilerServices;
using Academy.Architecture.Tests.Planted.Competence;
using Academy.Architecture.Tests.Planted.Storage;
using Academy.Architecture.Tests.Planted.Web.Shell;
using Academy.Competence;

namespace Academy.Architecture.Tests;

/// <summary>What each room may use. A border that matters is one that a build keeps.</summary>
public class RoomsTests
{
    // Nothing may depend on a room above it; what a room may use of others' work is listed whole.
    private static readonly Dictionary<string, string[]> s_mayUse = new(StringComparer.Ordinal)
    {
        ["Academy.Competence"] = ["System", "MathNet.Numerics", "Academy.Competence"],
        ["Academy.Modules"] =
        [
            "System",
            "Markdig",
            "YamlDotNet",
            "DiffPlex",
            "Ganss.Xss",
            "AngleSharp",
            "SkiaSharp",
            "Academy.Competence",
            "Academy.Modules",
        ],
        ["Academy.Storage"] =
        [
            "System",
            "Microsoft.EntityFrameworkCore",
            "Microsoft.Extensions",
            // Accounts and the keys that forms are sealed with are tables like any other; these two bring their shape, not the web.
            "Microsoft.AspNetCore.Identity",
            "Microsoft.AspNetCore.DataProtection",
            "Academy.Competence",
            "Academy.Storage",
        ],
        ["Academy.Storage.Sqlite"] =
        [
            "System",
            "Microsoft.EntityFrameworkCore",
            "Microsoft.Extensions",
            "Microsoft.Data.Sqlite",
            "Microsoft.AspNetCore.Identity",
            "Microsoft.AspNetCore.DataProtection",
            "SQLitePCL",
            "Academy.Competence",
            "Academy.Storage",
        ],
    };

    private static readonly Border<Part> s_rooms = new(
        part => MayUse(part) is not null,
        part =>
            part.Uses.Where(use => !MayUse(part)!.Any(room => Text.IsOrIsBelow(use.Type, room)))
                .Select(use => $"{part} uses {use.Type}")
    );

    private static readonly Border<Assembly> s_lightLibrary = new(
        _ => true,
        library =>
            library
                .GetReferencedAssemblies()
                .Select(other => other.Name!)
                .Where(other => !Text.IsOrIsBelow(other, "System") && other != "MathNet.Numerics")
                .Select(other => $"{library.GetName().Name} references {other}")
    );

    private static readonly Border<Type> s_noTasks = new(
        type => !type.IsEnum,
        type => AllMethods(type).Where(IsAwaitable).Select(method => $"{type}.{method.Name} has to be awaited")
    );

    private static readonly Border<Type> s_nothingIsSet = new(
        type => !type.IsEnum,
        type => Settable(type).Concat(WritableFields(type)).Select(member => $"{type}.{member} can be changed")
    );

    private static readonly HashSet<string> s_decided = House
        .Competence.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(Reason)) || type == typeof(Granted))
        .Select(type => type.FullName!)
        .ToHashSet(StringComparer.Ordinal);

    private static readonly Border<Part> s_onlyCompetenceDecides = new(
        part => part.IsWritten && !part.IsIn("Academy.Competence"),
        part =>
            part.Uses.Where(use => use.Member.Contains("::.ctor(", StringComparison.Ordinal) && s_decided.Contains(use.Type))
                .Select(use => $"{part} makes {use.Type}")
    );

    private static readonly Border<Part> s_onlyStorageSaves = new(
        part => part.IsWritten && !part.IsIn("Academy.Storage"),
        part =>
            part.Uses.Where(use => use.Member.Contains("::SaveChanges", StringComparison.Ordinal))
                .Select(use => $"{part} saves by itself")
    );

    // Where the portal is put together somebody has to say which database it is, and whoever backs it up; nobody else knows.
    private static readonly string[] s_wiring = ["Program", "StorageSetup", "Command"];

    private static readonly Border<Part> s_onlyWiringKnowsTheDatabase = new(
        part => part.IsWritten && !part.IsIn("Academy.Storage.Sqlite") && !s_wiring.Contains(part.Name),
        part =>
            part.Uses.Where(use => Text.IsOrIsBelow(use.Type, "Academy.Storage.Sqlite") || IsSqlite(use.Type))
                .Select(use => $"{part} uses {use.Type}")
    );

    [Fact]
    public void A_room_uses_only_what_it_may()
    {
        s_rooms.Holds(House.Parts, atLeast: 350);
        s_rooms.Catches(House.Planted<LooksThingsUp>());
        s_rooms.Catches(House.Planted<AnswersARequest>());
    }

    [Fact]
    public void Competence_references_the_language_and_mathematics_and_nothing_else()
    {
        s_lightLibrary.Holds([House.Competence], atLeast: 1);
        s_lightLibrary.Catches(House.Storage);
    }

    [Fact]
    public void Competence_makes_nobody_wait()
    {
        s_noTasks.Holds(House.TypesOf(House.Competence), atLeast: 200);
        s_noTasks.Catches(typeof(LooksThingsUp));
        s_noTasks.Catches(typeof(AsksLater));
    }

    [Fact]
    public void What_competence_says_is_never_changed_afterwards()
    {
        s_nothingIsSet.Holds(House.TypesOf(House.Competence), atLeast: 200);
        s_nothingIsSet.Catches(typeof(CanBeSet));
        s_nothingIsSet.Catches(typeof(HasAnOpenField));
    }

    [Fact]
    public void Only_competence_makes_reasons_and_grants()
    {
        s_onlyCompetenceDecides.Holds(House.Parts, atLeast: 200);
        s_onlyCompetenceDecides.Catches(House.Planted<DecidesByItself>());
    }

    [Fact]
    public void Nobody_outside_competence_could_make_a_grant_at_all()
    {
        Assert.All(
            typeof(Granted).GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic),
            made => Assert.False(made.IsPublic)
        );
        Assert.Empty(House.Competence.GetCustomAttributes<InternalsVisibleToAttribute>());
    }

    [Fact]
    public void Only_storage_saves()
    {
        s_onlyStorageSaves.Holds(House.Parts, atLeast: 350);
        s_onlyStorageSaves.Catches(House.Planted<SavesByItself>());
    }

    [Fact]
    public void Only_the_wiring_knows_which_database_it_is()
    {
        s_onlyWiringKnowsTheDatabase.Holds(House.Parts, atLeast: 400);
        s_onlyWiringKnowsTheDatabase.Catches(House.Planted<OpensTheFile>());
    }

    private static string[]? MayUse(Part part) =>
        s_mayUse
            .Where(room => part.IsIn(room.Key))
            .OrderByDescending(room => room.Key.Length)
            .Select(room => room.Value)
            .FirstOrDefault();

    private static bool IsSqlite(string type) =>
        type.Contains("Sqlite", StringComparison.Ordinal) || Text.IsOrIsBelow(type, "SQLitePCL");

    private static MethodInfo[] AllMethods(Type type) =>
        type.GetMethods(
            BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly
        );

    private static bool IsAwaitable(MethodInfo method) =>
        typeof(Task).IsAssignableFrom(method.ReturnType)
        || method.ReturnType == typeof(ValueTask)
        || method.ReturnType is { IsGenericType: true } made && s_awaitables.Contains(made.GetGenericTypeDefinition());

    private static readonly Type[] s_awaitables = [typeof(ValueTask<>), typeof(IAsyncEnumerable<>)];

    private static IEnumerable<string> Settable(Type type) =>
        type.GetProperties(
                BindingFlags.Instance
                    | BindingFlags.Static
                    | BindingFlags.Public
                    | BindingFlags.NonPublic
                    | BindingFlags.DeclaredOnly
            )
            .Where(property => property.SetMethod is { } set && !IsInit(set))
            .Select(property => property.Name);

    private static bool IsInit(MethodInfo set) =>
        set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static IEnumerable<string> WritableFields(Type type) =>
        type.GetFields(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly)
            .Where(field => !field.IsInitOnly && !field.IsLiteral)
            .Select(field => field.Name);
}
