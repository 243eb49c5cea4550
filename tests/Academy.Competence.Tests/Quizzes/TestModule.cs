using Academy.Competence.Quizzes;

namespace Academy.Competence.Tests.Quizzes;

/// <summary>A small invented module about drying, with as many questions as a test asks for.</summary>
internal static class TestModule
{
    public static Module Drying(int mustKnow = 6, int others = 20) =>
        new()
        {
            Name = new("drying"),
            Title = "Drying",
            Summary = "Dry a coat without heat harm.",
            Minutes = 10,
            Edition = 1,
            SafetyCriticalSince = 1,
            Hash = new('0', 64),
            Opens = [new("cabinet")],
            Aims = [new("air", "Hold the nozzle so that no skin gets hot")],
            Sources = [],
            ReviewedOn = new(2026, 11, 25),
            ReviewDueOn = new(2027, 11, 25),
            RefresherDays = 90,
            Questions =
            [
                .. Enumerable.Range(1, mustKnow).Select(number => Question($"must-{number:00}", isMustKnow: true)),
                .. Enumerable.Range(1, others).Select(number => Question($"air-{number:00}", isMustKnow: false)),
            ],
        };

    public static Question Question(string id, bool isMustKnow, int right = 1) =>
        new(
            id,
            $"What about {id}?",
            "air",
            isMustKnow,
            new Choice([
                .. Enumerable.Range(0, right).Select(number => new Option($"right {number}", IsRight: true)),
                .. Enumerable.Range(0, 3).Select(number => new Option($"wrong {number}", IsRight: false)),
            ]),
            "Because."
        );

    /// <summary>The answers of somebody who is right everywhere but in the questions named.</summary>
    public static IReadOnlyList<Answer> Answers(Module module, int seed, QuizKind kind, params string[] wrong) =>
        [
            .. Quizzing
                .Draw(module, seed, kind)
                .Select(question => new Answer(question.Id, [.. Places(question, right: !wrong.Contains(question.Id))])),
        ];

    public static IEnumerable<int> Places(Question question, bool right) =>
        Options(question).Index().Where(option => option.Item.IsRight == right).Select(option => option.Index);

    public static Listed<Option> Options(Question question) => ((Choice)question.Kind).Options;
}
