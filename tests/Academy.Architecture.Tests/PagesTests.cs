using System.Reflection;
using System.Text.RegularExpressions;
using Academy.Architecture.Tests.Planted.Web.Features.Petting;
using Academy.Web.Access;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Architecture.Tests;

/// <summary>Pages are thin, keep to their feature, and say for whom they open.</summary>
public partial class PagesTests
{
    private const string Features = "Academy.Web.Features";

    // Everything else opens only for somebody who is signed in and works here.
    private static readonly Dictionary<string, string> s_signedOut = new(StringComparer.Ordinal)
    {
        ["/heat"] = "a dog that is too hot does not wait for a password",
        ["/error"] = "whoever meets our mistake is told its number",
        ["/status"] = "the answer to an address that is not there",
        ["/sign-in"] = "the way in",
        ["/sign-out"] = "the way out works whoever one is",
        ["/set-up"] = "opens the salon, and only while there is none",
        ["/join"] = "an invitation, which is its own key",
        ["/swatches"] = "the look of the parts, in development only",
    };

    private static readonly Border<Part> s_pagesKnowNoDatabase = new(
        part => part.IsIn(Features) && part.Type.IsAssignableTo(typeof(PageModel)),
        part => OfTheDatabase(part).Select(use => $"{part} uses {use}")
    );

    private static readonly Border<Part> s_onlyQueriesTouchTheDatabase = new(
        part => part.IsWritten && part.IsIn(Features) && !IsQueries(part),
        part => OfTheDatabase(part).Select(use => $"{part} uses {use}; a class whose name ends in Queries may")
    );

    private static readonly Border<Part> s_featuresAreStrangers = new(
        part => FeatureOf(part.Room) is not (null or "Shared"),
        part =>
            part.Uses.Select(use => (use.Type, Feature: FeatureOf(use.Type)))
                .Where(use => use.Feature is not (null or "Shared") && use.Feature != FeatureOf(part.Room) && IsFolder(use.Type))
                .Select(use => $"{part} uses {use.Type} of the feature {use.Feature}")
    );

    private static readonly Border<Source> s_viewsAreStrangers = new(
        source => FolderOf(source) is not (null or "Shared"),
        source =>
            OtherFeature()
                .Matches(source.Text)
                .Select(other => other.Groups["feature"].Value)
                .Where(other => other != "Shared" && other != FolderOf(source))
                .Select(other => $"{source.Path} names the feature {other}")
    );

    private static readonly Border<Type> s_pagesSayForWhomTheyOpen = new(
        IsOpened,
        type =>
            SaysForWhom(type) ? [] : [$"{type} opens for nobody: give it [Authorize(Policy = Policies.…)] or [AllowAnonymous]"]
    );

    private static readonly Border<(string Route, Type Model)> s_signedOutIsListed = new(
        page => page.Model.IsDefined(typeof(AllowAnonymousAttribute), inherit: true),
        page =>
            s_signedOut.Keys.Any(route => IsOrIsUnder(page.Route, route))
                ? []
                : [$"{page.Route} opens signed out: list it with its reason"]
    );

    private static readonly Border<Source> s_pagesAreShort = new(
        source => source.Path.EndsWith(".cshtml.cs", StringComparison.Ordinal),
        source =>
            source.Lines.Length < 120
                ? []
                : [$"{source.Path} has {source.Lines.Length} lines: what does it do that is not gather, decide, keep, show?"]
    );

    [Fact]
    public void Page_models_know_no_database_and_no_rows()
    {
        s_pagesKnowNoDatabase.Holds(House.Parts, atLeast: 4);
        s_pagesKnowNoDatabase.Catches(House.Planted<PetModel>());
    }

    [Fact]
    public void Only_queries_touch_the_database_in_features()
    {
        s_onlyQueriesTouchTheDatabase.Holds(House.Parts, atLeast: 15);
        s_onlyQueriesTouchTheDatabase.Catches(House.Planted<PetLookup>());
    }

    [Fact]
    public void Features_do_not_know_each_other()
    {
        s_featuresAreStrangers.Holds(House.Parts, atLeast: 8);
        s_featuresAreStrangers.Catches(House.Planted<Borrower>());
        s_viewsAreStrangers.Holds(Text.Files(".cshtml"), atLeast: 5);
        s_viewsAreStrangers.Catches(new("src/Academy.Web/Features/Petting/Pet.cshtml", "@using Academy.Web.Features.Brushing"));
        s_viewsAreStrangers.Catches(
            new("src/Academy.Web/Features/Petting/Pet.cshtml", "<partial name=\"/Features/Brushing/_Brush.cshtml\" />")
        );
    }

    [Fact]
    public void Every_page_says_for_whom_it_opens()
    {
        s_pagesSayForWhomTheyOpen.Holds(House.Web.GetTypes(), atLeast: 4);
        s_pagesSayForWhomTheyOpen.Catches(typeof(PetModel));
        s_pagesSayForWhomTheyOpen.Catches(typeof(MisspeltModel));
        s_pagesSayForWhomTheyOpen.Catches(typeof(PetController));
        s_pagesSayForWhomTheyOpen.Allows(typeof(GuardedModel));
    }

    [Fact]
    public void What_opens_signed_out_is_listed_with_its_reason()
    {
        s_signedOutIsListed.Holds(Pages(), atLeast: 4);
        s_signedOutIsListed.Catches(("/petting", typeof(OpenModel)));
        s_signedOutIsListed.Catches(("/heated-towels", typeof(OpenModel)));
    }

    [Fact]
    public void A_page_model_stays_under_120_lines()
    {
        var models = Text.Files(".cshtml.cs");
        s_pagesAreShort.Holds(models, atLeast: 4);
        s_pagesAreShort.Catches(
            new("src/Academy.Web/Features/Petting/Pet.cshtml.cs", string.Concat(Enumerable.Repeat("pet\n", 120)))
        );
        s_pagesAreShort.Allows(
            new("src/Academy.Web/Features/Petting/Pet.cshtml.cs", string.Concat(Enumerable.Repeat("pet\n", 119)))
        );

        foreach (var longest in models.OrderByDescending(source => source.Lines.Length).Take(5))
            TestContext.Current.TestOutputHelper?.WriteLine($"{longest.Lines.Length, 4} {longest.Path}");
    }

    [Fact]
    public void Every_page_names_its_address_and_its_model() =>
        Assert.Equal(
            Text.Files(".cshtml").Where(source => Directive().IsMatch(source.Text)).Select(source => source.Path),
            AllPages().Select(page => page.Path)
        );

    private static IEnumerable<string> OfTheDatabase(Part part) =>
        part
            .Uses.Select(use => use.Type)
            .Where(type =>
                Text.IsOrIsBelow(type, "Microsoft.EntityFrameworkCore")
                || Text.IsOrIsBelow(type, "Academy.Storage.Rows")
                || type == "Academy.Storage.AcademyDb"
            )
            .Distinct(StringComparer.Ordinal);

    // A nested record of a queries class belongs to it.
    private static bool IsQueries(Part part) =>
        part.Name.EndsWith("Queries", StringComparison.Ordinal)
        || part.Type.DeclaringType?.Name.EndsWith("Queries", StringComparison.Ordinal) == true;

    private static string? FeatureOf(string name) =>
        name.StartsWith(Features + ".", StringComparison.Ordinal)
            ? name[(Features.Length + 1)..].Split('.', '+')[0]
            : FeatureOfPlanted(name);

    private static string? FeatureOfPlanted(string name)
    {
        const string Plot = "Academy.Architecture.Tests.Planted.Web.Features.";
        return name.StartsWith(Plot, StringComparison.Ordinal) ? name[Plot.Length..].Split('.', '+')[0] : null;
    }

    // What stands beside the folders (the list of what to register) is nobody's feature.
    private static bool IsFolder(string type) => type.Split("Features.")[^1].Contains('.', StringComparison.Ordinal);

    private static string? FolderOf(Source source) =>
        Folder().Match(source.Path) is { Success: true } found ? found.Groups["feature"].Value : null;

    private static bool IsOpened(Type type) =>
        !type.IsAbstract && (type.IsAssignableTo(typeof(PageModel)) || type.IsAssignableTo(typeof(ControllerBase)));

    private static bool SaysForWhom(Type type) =>
        Says(type)
        || type.IsAssignableTo(typeof(ControllerBase))
            && type.GetMethods(BindingFlags.Instance | BindingFlags.Public | BindingFlags.DeclaredOnly) is { Length: > 0 } actions
            && actions.All(Says);

    private static bool Says(MemberInfo member) =>
        member.IsDefined(typeof(AllowAnonymousAttribute), inherit: true)
        || member
            .GetCustomAttributes<AuthorizeAttribute>(inherit: true)
            .Any(asked => asked.Policy is { } policy && Policies.Opens.ContainsKey(policy));

    private static bool IsOrIsUnder(string route, string listed) =>
        route == listed || route.StartsWith(listed + "/", StringComparison.Ordinal);

    private static IEnumerable<(string Path, string Route, Type Model)> AllPages() =>
        from source in Text.Files(".cshtml")
        let page = Address().Match(source.Text)
        let model = Model().Match(source.Text)
        where page.Success && model.Success
        select (source.Path, page.Groups["route"].Value, ModelOf(source, model.Groups["model"].Value));

    private static IEnumerable<(string Route, Type Model)> Pages() => AllPages().Select(page => (page.Route, page.Model));

    private static Type ModelOf(Source source, string name) =>
        House
            .Web.GetTypes()
            .Single(type =>
                type.Name == name.Split('.')[^1]
                && (type.Namespace ?? "").EndsWith("." + FolderOf(source), StringComparison.Ordinal)
            );

    [GeneratedRegex(@"Features[./](?<feature>[A-Z]\w+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex OtherFeature();

    [GeneratedRegex(@"/Features/(?<feature>\w+)/", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Folder();

    [GeneratedRegex(@"^@page\b", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Directive();

    [GeneratedRegex(
        @"^@page ""(?<route>/[^""]*)""",
        RegexOptions.CultureInvariant | RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Address();

    [GeneratedRegex(
        @"^@model (?<model>[\w.]+Model)\s*$",
        RegexOptions.CultureInvariant | RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Model();
}
