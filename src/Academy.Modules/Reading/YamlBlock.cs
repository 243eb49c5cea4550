using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using YamlDotNet.RepresentationModel;

namespace Academy.Modules.Reading;

/// <summary>Reads the YAML of a front matter, refusing what only an attacker or a mistake would write there.</summary>
internal static class YamlBlock
{
    private const int LargestBlock = 16 * 1024;
    private const int DeepestLevel = 4;

    /// <summary>Lines inside the block begin at 1; the block begins on the second line of the file.</summary>
    public static int FileLine(Mark mark) => (int)mark.Line + 1;

    public static YamlMappingNode? Of(string block, Findings findings)
    {
        if (block.Length > LargestBlock)
        {
            findings.Broken(1, $"The front matter has {block.Length} characters; {LargestBlock} are the most.");
            return null;
        }
        Plain events = new(new Parser(new StringReader(block)));
        try
        {
            return Mapping(events, findings);
        }
        catch (RefusedException reason)
        {
            findings.Broken(FileLine(reason.Start), reason.Message);
            return null;
        }
        catch (YamlException reason)
        {
            findings.Broken(FileLine(reason.Start), $"The front matter cannot be read here: {reason.Message.TrimEnd('.')}.");
            return null;
        }
        catch (Exception reason) when (reason is InvalidOperationException or ArgumentException)
        {
            // The parser's own words for a bracket that is never closed and its like: it gives up without saying where.
            findings.Broken(
                events.Line,
                "The front matter cannot be read from here on. Look for a bracket, a brace or a quotation mark that is opened and not closed."
            );
            return null;
        }
    }

    private static string? Refusal(ParsingEvent at, int level) =>
        at switch
        {
            AnchorAlias => "The front matter uses an alias (*name). Write the value out.",
            NodeEvent { Anchor.IsEmpty: false } => "The front matter uses an anchor (&name). Write plain values.",
            NodeEvent { Tag.IsEmpty: false } => "The front matter uses a tag (!name). Write plain values.",
            DocumentStart { IsImplicit: false } => "The front matter holds a second document. Keep one block of keys.",
            // The stream and the document are levels of their own.
            _ when level > DeepestLevel + 2 => "The front matter is nested too deeply. Write lists and keys as the README shows.",
            _ => null,
        };

    private static YamlMappingNode? Mapping(Plain events, Findings findings)
    {
        YamlStream stream = [];
        stream.Load(events);
        if (stream.Documents is [{ RootNode: YamlMappingNode keys }])
            return keys;
        findings.Broken(1, "The front matter holds no keys. Write lines such as \"name: heat-stroke\".");
        return null;
    }

    private sealed class RefusedException(Mark start, Mark end, string message) : YamlException(start, end, message);

    // Looked at event by event before the tree grows by it: an alias can stand for millions of nodes, nesting can exhaust the stack.
    private sealed class Plain(Parser events) : IParser
    {
        private int _level;

        public ParsingEvent? Current => events.Current;

        /// <summary>The line of the file that was read last.</summary>
        public int Line => Current is { } read ? FileLine(read.Start) : 1;

        public bool MoveNext()
        {
            if (!events.MoveNext())
                return false;
            _level += events.Current!.NestingIncrease;
            return Refusal(events.Current, _level) is { } refusal
                ? throw new RefusedException(events.Current.Start, events.Current.End, refusal)
                : true;
        }
    }
}
