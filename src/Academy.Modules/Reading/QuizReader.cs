using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Academy.Competence.Quizzes;

namespace Academy.Modules.Reading;

/// <summary>Reads the questions below the heading "# Quiz".</summary>
internal sealed partial class QuizReader(Findings findings)
{
    private readonly List<Draft> _drafts = [];
    private Draft? _current;

    public static IReadOnlyList<(Question Question, int Line)> Of(IEnumerable<(int Line, string Text)> lines, Findings findings)
    {
        QuizReader reader = new(findings);
        foreach (var (line, text) in lines)
            reader.Read(line, text.Trim());
        return [.. reader._drafts.Select(draft => (draft.Question(findings), draft.Line))];
    }

    private void Read(int line, string text)
    {
        if (text.StartsWith('#'))
            Begin(line, text);
        else if (text.Length > 0 && _current is not null)
            Continue(_current, line, text);
        else if (text.Length > 0)
            findings.Broken(
                line,
                "This line stands before the first question. Begin a question with \"## \" and its short name."
            );
    }

    private void Begin(int line, string text)
    {
        var heading = Heading().Match(text);
        _current = new(line, heading.Groups["id"].Value, heading.Groups["must"].Success);
        if (heading.Success)
            _drafts.Add(_current);
        else
            findings.Broken(
                line,
                "A question begins with \"## \", its short name and, where a wrong answer fails the quiz, \"must-know\": \"## heat-01 must-know\"."
            );
    }

    private void Continue(Draft draft, int line, string text)
    {
        if (Part().Match(text) is { Success: true } part)
            draft.Start(new(line, part.Groups["name"].Value, part.Groups["words"].Value, part.Groups["at"].Value));
        else if (!draft.IsGivingReason && Step().Match(text) is { Success: true } step)
            draft.Start(new(line, QuestionPart.Step, step.Groups["words"].Value, step.Groups["number"].Value));
        else if (text.StartsWith("- ", StringComparison.Ordinal))
            findings.Broken(
                line,
                "An option begins with \"- Right: \" or \"- Wrong: \", a place on a picture with \"- Right at 120,80: \", a pair with \"- Pair: \"."
            );
        else
            draft.Append(text);
    }

    private sealed class Draft(int line, string id, bool isMustKnow)
    {
        private readonly List<QuestionPart> _parts = [new(line, "Question", "")];

        public int Line => line;

        // A sentence of the reason may begin with a number and a full stop.
        public bool IsGivingReason => _parts[^1].Name == "Because";

        public void Start(QuestionPart part) => _parts.Add(part);

        // Words after "Aim:" are the question; everywhere else a further line goes on with what the line before it began.
        public void Append(string words)
        {
            var at = _parts[^1].Name == "Aim" ? 0 : _parts.Count - 1;
            _parts[at] = _parts[at].With(words);
        }

        public Question Question(Findings findings) =>
            new(
                id,
                Words("Question"),
                Words("Aim"),
                isMustKnow,
                new KindReader(
                    line,
                    [.. _parts.Where(part => part.Name is not ("Question" or "Aim" or "Because"))],
                    findings
                ).Read(),
                Words("Because")
            );

        private string Words(string name) =>
            string.Join(' ', _parts.Where(part => part.Name == name).Select(part => part.Words)).Trim();
    }

    [GeneratedRegex(@"^##\s+(?<id>\S+)(\s+(?<must>must-know))?$", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex Heading();

    [GeneratedRegex(
        @"^(-\s+(?<name>Right|Wrong)(\s+at\s+(?<at>[^:]*))?|-\s+(?<name>Pair|Spare)|(?<name>Aim|Because|Answer|Picture)):\s*(?<words>.*)$",
        RegexOptions.ExplicitCapture,
        Patience.Milliseconds
    )]
    private static partial Regex Part();

    [GeneratedRegex(@"^(?<number>[0-9]{1,2})\.(\s+(?<words>.*))?$", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex Step();
}
