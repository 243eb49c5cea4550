using System.Collections;
using System.Globalization;
using System.Text.Encodings.Web;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace Academy.Web.Shell.Tags;

/// <summary>
/// What is wrong with a form: the same numbers and the same words on top of the page and beside each field, in the order in
/// which the fields stand on the page. The summary is written when the whole page is drawn, so it knows that order.
/// </summary>
internal sealed class Mending
{
    private readonly List<(string Key, string Words, int Number)> _told = [];
    private readonly ModelStateDictionary _state;

    private Mending(ModelStateDictionary state)
    {
        _state = state;
        Tell("");
    }

    public bool IsEmpty => _state.ErrorCount == 0;

    public static Mending Of(ViewContext view)
    {
        var state = view.ViewData.ModelState;
        if (view.HttpContext.Items[state] is not Mending there)
            view.HttpContext.Items[state] = there = new Mending(state);
        return there;
    }

    /// <summary>What is wrong with one field; it stands behind those that asked before it.</summary>
    public IReadOnlyList<(string Words, int Number)> At(string key)
    {
        if (_told.TrueForAll(wrong => wrong.Key != key))
            Tell(key);
        return [.. _told.Where(wrong => wrong.Key == key).Select(wrong => (wrong.Words, wrong.Number))];
    }

    /// <summary>Everything, those last that stand beside no field of the page.</summary>
    public IReadOnlyList<(string Key, string Words, int Number)> All()
    {
        foreach (var key in _state.Keys)
            At(key);
        return _told;
    }

    public static string Id(string key) => TagBuilder.CreateSanitizedId(key, "_");

    private void Tell(string key)
    {
        if (_state.TryGetValue(key, out var field))
            foreach (var words in field.Errors.Select(Say).Distinct())
                _told.Add((key, words, _told.Count + 1));
    }

    private static string Say(ModelError error) =>
        string.IsNullOrEmpty(error.ErrorMessage) ? "This could not be read. Write it again." : error.ErrorMessage;
}

/// <summary>On top of a form that came back: there is a problem, and a numbered line for each, leading to its field.</summary>
[HtmlTargetElement("error-summary", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class ErrorSummaryTag : TagHelper
{
    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var mending = Mending.Of(View);
        if (mending.IsEmpty)
        {
            output.SuppressOutput();
            return;
        }

        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape("mend");
        output.Attributes.SetAttribute("role", "group");
        output.Attributes.SetAttribute("aria-labelledby", "mend");
        output.Attributes.SetAttribute("tabindex", "-1");
        output.Attributes.Add(new TagHelperAttribute("autofocus"));
        output.Content.SetHtmlContent(Heading());
        output.Content.AppendHtml(new Later(() => Lines(mending.All())));
        output.Content.AppendHtml(Drawn.Element("p", "small", "Everything you typed is still here."));
    }

    private static TagBuilder Heading()
    {
        var heading = Drawn.Element("h2", null, "There is a problem");
        heading.Attributes["id"] = "mend";
        return heading;
    }

    private static TagBuilder Lines(IEnumerable<(string Key, string Words, int Number)> wrongs)
    {
        var list = Drawn.Element("ol", null);
        foreach (var wrong in wrongs)
        {
            list.Holding(Drawn.Element("li", null).Holding(Line(wrong)));
        }

        return list;
    }

    private static TagBuilder Line((string Key, string Words, int Number) wrong)
    {
        var line = Drawn.Element(wrong.Key.Length == 0 ? "span" : "a", "line");
        if (wrong.Key.Length > 0)
        {
            line.Attributes["href"] = "#" + Mending.Id(wrong.Key);
        }

        return line.Holding(NumberTag.Of(wrong.Number)).Holding(Drawn.Element("span", null, wrong.Words));
    }
}

/// <summary>Made only when the page is written out, after everything on it was drawn.</summary>
internal sealed class Later(Func<IHtmlContent> made) : IHtmlContent
{
    public void WriteTo(TextWriter writer, HtmlEncoder encoder) => made().WriteTo(writer, encoder);
}

internal static class NumberTag
{
    public static TagBuilder Of(int number) => Drawn.Element("span", "no-tag", number.ToString(CultureInfo.InvariantCulture));
}

/// <summary>
/// One field: label, hint, what is wrong, and the control. Without content it writes a text box; content may hold an
/// <c>input</c>, <c>select</c> or <c>textarea</c> with <c>asp-for</c>, which then is tied to hint and error.
/// </summary>
[HtmlTargetElement("field", Attributes = "for")]
public sealed class FieldTag(IHtmlGenerator html) : TagHelper
{
    public ModelExpression For { get; set; } = null!;

    public string Label { get; set; } = "";

    public string? Hint { get; set; }

    public string Type { get; set; } = "text";

    public string? Unit { get; set; }

    public string? Autocomplete { get; set; }

    public string? Inputmode { get; set; }

    public int Rows { get; set; }

    public bool Short { get; set; }

    /// <summary>The choices of a drop-down list.</summary>
    public IEnumerable<SelectListItem>? Items { get; set; }

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override async Task ProcessAsync(TagHelperContext context, TagHelperOutput output)
    {
        var parts = Parts.Of(View, For.Name, Label, Hint);
        context.Items[typeof(Parts)] = parts;
        var content = await output.GetChildContentAsync();

        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape(parts.IsWrong ? "field err" : "field");
        output.Content.SetHtmlContent(LabelOf(parts));
        output.Content.AppendHtml(parts.Notes());
        output.Content.AppendHtml(Beside(content.IsEmptyOrWhiteSpace ? Control(parts) : content));
    }

    private TagBuilder LabelOf(Parts parts)
    {
        var label = Drawn.Element("label", "lab");
        label.Attributes["for"] = Mending.Id(View.ViewData.TemplateInfo.GetFullHtmlFieldName(For.Name));
        return label.Holding(parts.Title());
    }

    private IHtmlContent Beside(IHtmlContent control) =>
        Type == "password" ? Drawn.Element("div", "unit").Holding(control).Holding(Show())
        : Unit is null ? control
        : Drawn.Element("div", "unit").Holding(control).Holding(Drawn.Element("span", null, Unit));

    // The script takes "hidden" away: without one the button could do nothing.
    private TagBuilder Show()
    {
        Secrets.Mark(View.HttpContext);
        var show = Drawn
            .Element("button", "act2")
            .Holding(Drawn.Element("span", null, "Show").Holding(Drawn.Unseen(" password")));
        show.Attributes["type"] = "button";
        show.Attributes["data-shows"] = Mending.Id(View.ViewData.TemplateInfo.GetFullHtmlFieldName(For.Name));
        show.Attributes["aria-pressed"] = "false";
        show.Attributes["hidden"] = "hidden";
        return show;
    }

    private TagBuilder Control(Parts parts)
    {
        var control =
            Items is not null
                ? html.GenerateSelect(
                    View,
                    For.ModelExplorer,
                    optionLabel: null,
                    For.Name,
                    Items,
                    allowMultiple: false,
                    htmlAttributes: null
                )
            : Rows > 0 ? html.GenerateTextArea(View, For.ModelExplorer, For.Name, Rows, columns: 0, htmlAttributes: null)
            : Type == "password" ? html.GeneratePassword(View, For.ModelExplorer, For.Name, value: null, htmlAttributes: null)
            : html.GenerateTextBox(View, For.ModelExplorer, For.Name, For.Model, format: Format(), htmlAttributes: null);
        if (control.TagName == "input")
        {
            control.MergeAttribute("type", Type, replaceExisting: true);
        }

        control.Attributes.Remove("cols");
        Say(control, "autocomplete", Autocomplete);
        Say(control, "inputmode", Inputmode);
        parts.Tie((name, value) => control.MergeAttribute(name, value, replaceExisting: true));
        if (Short)
        {
            control.AddCssClass("short");
        }

        return control;
    }

    private string? Format() =>
        Type switch
        {
            "date" => "{0:yyyy-MM-dd}",
            "datetime-local" => "{0:yyyy-MM-ddTHH:mm}",
            "time" => "{0:HH:mm}",
            _ => null,
        };

    private static void Say(TagBuilder control, string name, string? value)
    {
        if (value is not null)
        {
            control.MergeAttribute(name, value, replaceExisting: true);
        }
    }
}

/// <summary>Whether a page asks for a password: only then is the script that can show it sent along.</summary>
public static class Secrets
{
    public static bool AreAsked(HttpContext http) => http.Items.ContainsKey(typeof(Secrets));

    internal static void Mark(HttpContext http) => http.Items[typeof(Secrets)] = true;
}

/// <summary>A control that the page wrote itself inside a <c>field</c>: tied to the field's hint and error.</summary>
[HtmlTargetElement("input", Attributes = "asp-for")]
[HtmlTargetElement("select", Attributes = "asp-for")]
[HtmlTargetElement("textarea", Attributes = "asp-for")]
public sealed class TiedControlTag : TagHelper
{
    // After the framework's own tags, which write the id.
    public override int Order => 1000;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        if (context.Items.TryGetValue(typeof(Parts), out var found) && found is Parts parts)
        {
            parts.Tie(output.Attributes.SetAttribute);
        }
    }
}

/// <summary>
/// A group of choices, each a real radio button (or checkbox, with <c>many</c>) under a surface that a damp hand hits.
/// <c>kind</c>: <c>picks</c> (default), <c>levels</c> (one below the other, with number and note), <c>tri</c> (three in a bar),
/// <c>swpicks</c> (swatches), <c>opts</c> (answers of a question). Content stands before the choices.
/// </summary>
[HtmlTargetElement("picks", Attributes = "for", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class PicksTag : TagHelper
{
    public ModelExpression For { get; set; } = null!;

    public string Legend { get; set; } = "";

    public string? Hint { get; set; }

    public IEnumerable<Pick> Items { get; set; } = [];

    public bool Many { get; set; }

    public string Kind { get; set; } = "picks";

    /// <summary>A legend as large as a heading.</summary>
    public bool Heading { get; set; }

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override async Task ProcessAsync(TagHelperContext context, TagHelperOutput output)
    {
        var before = await output.GetChildContentAsync();
        var name = View.ViewData.TemplateInfo.GetFullHtmlFieldName(For.Name);
        var parts = Parts.Of(View, For.Name, Legend, Hint);
        output.TagName = "fieldset";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape($"field group of-{Kind}{(parts.IsWrong ? " err" : "")}");
        parts.Tie(
            (attribute, value) =>
            {
                if (attribute == "aria-describedby")
                {
                    output.Attributes.SetAttribute(attribute, value);
                }
            }
        );
        output.Content.SetHtmlContent(Drawn.Element("legend", Heading ? "h" : "lab").Holding(parts.Title()));
        output.Content.AppendHtml(parts.Notes());
        output.Content.AppendHtml(before);
        output.Content.AppendHtml(Choices(name, parts));
    }

    private HtmlContentBuilder Choices(string name, Parts parts)
    {
        var chosen = Chosen(name);
        var all = new HtmlContentBuilder();
        foreach (var group in Items.Index().GroupBy(one => one.Item.Group))
        {
            if (group.Key is not null)
            {
                all.AppendHtml(Drawn.Element("p", "grp", group.Key));
            }

            var choices = Drawn.Element("div", Kind);
            foreach (var (at, pick) in group)
            {
                choices.Holding(Choice(pick, name, at, chosen.Contains(pick.Value), parts.IsWrong));
            }

            all.AppendHtml(choices);
        }

        return all;
    }

    private TagBuilder Choice(Pick pick, string name, int at, bool chosen, bool wrong)
    {
        var input = new TagBuilder("input") { TagRenderMode = TagRenderMode.SelfClosing };
        input.Attributes["type"] = Many ? "checkbox" : "radio";
        input.Attributes["name"] = name;
        input.Attributes["value"] = pick.Value;
        input.Attributes["id"] = at == 0 ? Mending.Id(name) : $"{Mending.Id(name)}-{at}";
        Mark(input, chosen, "checked", "checked");
        Mark(input, wrong && Many, "aria-invalid", "true");

        var label = Drawn.Element("label", Many ? "pick multi" : "pick").Holding(input);
        if (pick.When is not null)
        {
            label.Attributes["data-when"] = pick.When;
            label.AddCssClass(pick.IsMet ? "met" : "unmet");
        }

        if (pick.Coat is not null)
        {
            label.Holding(Drawn.Svg($"#sw-{pick.Coat}", "sw s44"));
        }

        if (pick.Number is not null)
        {
            label.Holding(Drawn.Element("span", "no", pick.Number));
        }

        var words = Drawn.Element("span", "words").Holding(Drawn.Element("span", "say", pick.Words));
        return label.Holding(pick.Note is null ? words : words.Holding(Drawn.Element("small", null, pick.Note)));
    }

    private static void Mark(TagBuilder input, bool applies, string attribute, string value)
    {
        if (applies)
        {
            input.Attributes[attribute] = value;
        }
    }

    // What was typed wins over what was stored, so that a form that comes back is as it was sent.
    private HashSet<string> Chosen(string name) =>
        View.ViewData.ModelState.TryGetValue(name, out var typed) && typed.RawValue is not null
            ? Spelled(typed.RawValue)
            : Spelled(For.Model);

    private static HashSet<string> Spelled(object? value) =>
        value switch
        {
            null => [],
            string one => [one],
            IEnumerable many => [.. many.Cast<object>().Select(Spell)],
            _ => [Spell(value)],
        };

    private static string Spell(object value) => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
}

/// <summary>What label, hint, error and control of one field need to know of each other.</summary>
internal sealed record Parts(string Id, string Label, string? Hint, IReadOnlyList<(string Words, int Number)> Wrong)
{
    public bool IsWrong => Wrong.Count > 0;

    public static Parts Of(ViewContext view, string expression, string label, string? hint)
    {
        var key = view.ViewData.TemplateInfo.GetFullHtmlFieldName(expression);
        return new Parts(Mending.Id(key), label, hint, Mending.Of(view).At(key));
    }

    public IHtmlContent Title()
    {
        var title = new HtmlContentBuilder();
        foreach (var (_, number) in Wrong)
        {
            title.AppendHtml(NumberTag.Of(number)).Append(" ");
        }

        return title.Append(Label);
    }

    public IHtmlContent Notes()
    {
        var notes = new HtmlContentBuilder();
        if (Hint is not null)
        {
            notes.AppendHtml(Note("hint", HintId, Hint));
        }

        return IsWrong ? notes.AppendHtml(Note("msg", ErrorId, string.Join(" ", Wrong.Select(wrong => wrong.Words)))) : notes;
    }

    public void Tie(Action<string, string> write)
    {
        var notes = string.Join(' ', new[] { Hint is null ? null : HintId, IsWrong ? ErrorId : null }.OfType<string>());
        if (notes.Length > 0)
        {
            write("aria-describedby", notes);
        }

        if (IsWrong)
        {
            write("aria-invalid", "true");
        }
    }

    private string HintId => Id + "-hint";

    private string ErrorId => Id + "-wrong";

    private static TagBuilder Note(string shape, string id, string words)
    {
        var note = Drawn.Element("p", shape, words);
        note.Attributes["id"] = id;
        return note;
    }
}
