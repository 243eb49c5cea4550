namespace Academy.Web.Features.Shared;

/// <summary>Where the pages that the index names are. Each page says the same address in its <c>@page</c>.</summary>
public static class Paths
{
    public const string Today = "/";
    public const string Study = "/study";
    public const string LogGroom = "/log";
    public const string MySkills = "/me";
    public const string Board = "/board";
    public const string SignOffs = "/sign-offs";
    public const string DogCheck = "/dog-check";
    public const string Decide = "/decide";
    public const string People = "/people";
    public const string Dogs = "/dogs";
    public const string NewDog = "/dogs/new";
    public const string Thresholds = "/thresholds";
    public const string Ledger = "/ledger";
    public const string Reading = "/readings/new";
    public const string Reviews = "/reviews";
    public const string Disputes = "/disputes";
    public const string Heat = "/heat";
    public const string SignIn = "/sign-in";
    public const string SignOut = "/sign-out";
    public const string SetUp = "/set-up";
    public const string Welcome = "/welcome";
    public const string NewPerson = "/people/new";
    public const string InToday = "/in-today";
    public const string Account = "/me/account";
    public const string House = "/house";
    public const string ModuleFindings = "/study/findings";
    public const string Coverage = "/coverage";
    public const string Trust = "/trust";
    public const string Lapsing = "/lapsing";

    public static string Person(Guid person) => $"{People}/{person}";

    public static string Dog(Guid dog) => $"{Dogs}/{dog}";

    /// <summary>Where a groom of this dog is started, or logged straight away.</summary>
    public static string LogDog(Guid dog) => $"{LogGroom}?dog={dog}";

    /// <summary>The one page on which a groom is told; <paramref name="dog"/> where nothing is known of the groom yet.</summary>
    public static string Log(Guid groom, Guid? dog = null) =>
        dog is null ? $"{LogGroom}/{groom}" : $"{LogGroom}/{groom}?dog={dog}";

    /// <summary>One groom's story.</summary>
    public static string Groom(Guid groom) => $"/grooms/{groom}";

    /// <summary>Reporting something on a groom, also days later.</summary>
    public static string Report(Guid groom) => $"/grooms/{groom}/incident";

    /// <summary>Signing off one person's part of a groom.</summary>
    public static string SignOff(Guid groom, Guid person) => $"{SignOffs}/{groom}?person={person}";

    /// <summary>One person's skills.</summary>
    public static string SkillsOf(Guid person) => $"{People}/{person}/skills";

    /// <summary>When somebody's rows may be full.</summary>
    public static string Ahead(Guid person) => $"{People}/{person}/ahead";

    /// <summary>Why somebody stands where she stands in one skill.</summary>
    public static string Why(Guid person, string skill) => $"{Board}/{person}/{skill}";

    /// <summary>Where the owner decides on one person.</summary>
    public static string DecideOn(Guid person) => $"{Decide}/{person}";

    /// <summary>Where the owner decides on one person and one skill, against the rules or not yet.</summary>
    public static string DecideOn(Guid person, string skill) => $"{Decide}/{person}/{skill}";

    /// <summary>One sign-off with what was said against it; where it is disputed, answered, or let count though late.</summary>
    public static string Dispute(Guid signOff) => $"{Disputes}/{signOff}";

    /// <summary>Grooms done alone by somebody who was not alone for them.</summary>
    public const string Flags = "/flags";

    /// <summary>One flagged groom, and what was spoken about it.</summary>
    public static string Flag(Guid groom, Guid person) => $"{Flags}/{groom}/{person}";

    /// <summary>One entry of the ledger with the words beside it.</summary>
    public static string LedgerEntry(long entry) => FormattableString.Invariant($"{Ledger}/{entry}");

    /// <summary>The owner's review of an incident.</summary>
    public static string Review(Guid incident) => $"{Reviews}/{incident}";

    /// <summary>Upholding a complaint or a redo against a groom.</summary>
    public static string Complaint(Guid groom) => $"/grooms/{groom}/complaint";

    /// <summary>Whom the owner or a deputy may stand down, and who is stood down.</summary>
    public const string StandDowns = "/stand-downs";

    /// <summary>Standing one person down, and lifting it.</summary>
    public static string StandDown(Guid person) => $"{StandDowns}/{person}";

    /// <summary>One lesson.</summary>
    public static string Module(string module) => $"{Study}/{module}";

    /// <summary>What seniors add to a lesson.</summary>
    public static string ModuleNotes(string module) => $"{Study}/{module}/notes";

    /// <summary>The editions of a module in this salon, newest first.</summary>
    public static string ModuleEditions(string module) => $"{Module(module)}/editions";

    /// <summary>Two editions side by side, each by its fingerprint; <see cref="Draft"/> in the place of the later one for the draft.</summary>
    public static string CompareEditions(string module, string from, string to) =>
        $"{ModuleEditions(module)}/compare?from={from}&to={to}";

    /// <summary>What <see cref="CompareEditions"/> calls the draft.</summary>
    public const string Draft = "draft";

    /// <summary>Who is affected by the newest edition, what each has to do and by when.</summary>
    public static string ModuleAffected(string module) => $"{ModuleEditions(module)}/affected";

    /// <summary>Where the library's edition of a module is taken in place of the salon's own.</summary>
    public static string TakeLibrarys(string module) => $"{ModuleEditions(module)}/library";

    /// <summary>Modules as a zip file: to keep elsewhere, and to take in.</summary>
    public const string Parcels = "/study/parcels";

    /// <summary>What is in a parcel that was brought.</summary>
    public const string ParcelBrought = $"{Parcels}/brought";

    /// <summary>Modules packed into a zip file: one by its name, or as the page of parcels calls several.</summary>
    public static string PackModules(string what) => $"{Parcels}?handler=Pack&what={Uri.EscapeDataString(what)}";

    /// <summary>Looking for words in the modules.</summary>
    public const string SearchModules = "/study/search";

    /// <summary>What is being written, and what can be changed.</summary>
    public const string Modules = "/modules";

    public const string NewModule = "/modules/new";

    /// <summary>Where in that list a module is begun to be changed.</summary>
    public static string ChangeModule(string module) => $"{Modules}#change-{module}";

    /// <summary>Where a module is written.</summary>
    public static string Write(string module) => $"{Modules}/{module}/write";

    /// <summary>The pictures of a module that is being written.</summary>
    public static string DraftPictures(string module) => $"{Modules}/{module}/pictures";

    /// <summary>One picture of a module that is being written.</summary>
    public static string DraftPicture(string module, string file) =>
        $"{DraftPictures(module)}?handler=Picture&file={Uri.EscapeDataString(file)}";

    /// <summary>Where somebody else is asked to read a module before it is published.</summary>
    public static string AskToRead(string module) => $"{Modules}/{module}/ask";

    /// <summary>Where a module is read over, given back or published.</summary>
    public static string ReadOver(string module) => $"{Modules}/{module}/read-over";

    /// <summary>A quiz under way, at one question or, without one, at the first that is open.</summary>
    public static string Quiz(string module, Guid attempt, int? question = null) =>
        question is null ? $"{Study}/{module}/quiz/{attempt}" : $"{Study}/{module}/quiz/{attempt}?q={question}";

    /// <summary>Where a quiz under way is looked over and handed in.</summary>
    public static string HandIn(string module, Guid attempt) => $"{Study}/{module}/quiz/{attempt}/hand-in";

    /// <summary>A picture that a question of a quiz under way asks about.</summary>
    public static string QuizPicture(string module, Guid attempt, string file) =>
        $"{Quiz(module, attempt)}?handler=Picture&file={Uri.EscapeDataString(file)}";

    /// <summary>Where a quiz ends whose module has changed under it.</summary>
    public static string ChangedQuiz(string module, Guid attempt) => $"{Study}/{module}/quiz/{attempt}/changed";

    /// <summary>What came of an attempt.</summary>
    public static string Attempt(Guid attempt) => $"/attempts/{attempt}";

    /// <summary>Where seniors judge the questions of modules.</summary>
    public const string Judge = "/judging";

    /// <summary>Judging a module, at one question or, without one, at the first that is open.</summary>
    public static string JudgeModule(string module, int? question = null) =>
        question is null ? $"{Judge}/{module}" : FormattableString.Invariant($"{Judge}/{module}?q={question}");

    /// <summary>Where a judgement is looked over and given.</summary>
    public static string GiveJudgement(string module) => $"{Judge}/{module}/give";

    /// <summary>What all judges say of a module together.</summary>
    public static string JudgePanel(string module) => $"{Judge}/{module}/panel";

    /// <summary>What the salon's answers say about its quizzes.</summary>
    public const string Measures = "/measures";

    /// <summary>The same of one quiz.</summary>
    public static string Measure(string module) => $"{Measures}/{module}";

    /// <summary>The same of one question.</summary>
    public static string MeasureQuestion(string module, string question) => $"{Measures}/{module}/questions/{question}";

    /// <summary>How each of those numbers is reckoned.</summary>
    public static string MeasuresExplained(string module) => $"{Measures}/{module}/explained";

    /// <summary>One skill's rules.</summary>
    public static string Threshold(string skill) => $"{Thresholds}/{skill}";

    /// <summary>The salon's skills and the modules each asks for.</summary>
    public const string Skills = "/skills";

    /// <summary>What the library suggests that skills ask for.</summary>
    public const string Suggested = "/skills/suggested";

    public const string NewSkill = "/skills/new";

    public static string Skill(string skill) => $"{Skills}/{skill}";
}
