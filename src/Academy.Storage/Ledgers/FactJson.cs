using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Academy.Competence;

namespace Academy.Storage.Ledgers;

/// <summary>The trade's records as JSON: ids and codes as plain strings, lists as arrays, only what a record is made from.</summary>
public static class FactJson
{
    private const string WordsKey = "$words";

    private const string KeptBeside = "*";

    public static JsonSerializerOptions Options { get; } =
        new()
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { OnlyWhatMakesIt } },
            Converters =
            {
                new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false),
                new MomentConverter(),
                new WordsConverter(),
                new ListedConverters(),
                new NameConverters(),
            },
        };

    public static void TakeWordsOut(JsonNode? node, string path, IDictionary<string, string> words)
    {
        foreach (var (place, child) in ChildrenOf(node))
        {
            if (child is JsonObject marked && marked.TryGetPropertyValue(WordsKey, out var text))
                place.Set(node!, TakeOut(text!.GetValue<string>(), $"{path}/{place}", words));
            else
                TakeWordsOut(child, $"{path}/{place}", words);
        }
    }

    public static void PutWordsBack(JsonNode? node, string path, IReadOnlyDictionary<string, string> words)
    {
        foreach (var (place, child) in ChildrenOf(node))
        {
            var here = $"{path}/{place}";
            if (words.TryGetValue(here, out var text))
                place.Set(node!, new JsonObject { [WordsKey] = text });
            else
                PutWordsBack(child, here, words);
        }
    }

    private static string TakeOut(string text, string path, IDictionary<string, string> words)
    {
        if (text.Length == 0)
            return "";
        words.Add(path, text);
        return KeptBeside;
    }

    private static (Place Place, JsonNode? Child)[] ChildrenOf(JsonNode? node) =>
        node switch
        {
            JsonObject members => [.. members.Select(member => (new Place(member.Key, 0), member.Value))],
            JsonArray items => [.. items.Select((item, i) => (new Place(Name: null, i), item))],
            _ => [],
        };

    // Sums, questions and flags that follow from the rest are not written: they are worked out again.
    private static void OnlyWhatMakesIt(JsonTypeInfo type)
    {
        for (var i = type.Properties.Count - 1; i >= 0; i--)
            if (type.Properties[i] is { Set: null, AssociatedParameter: null })
                type.Properties.RemoveAt(i);
    }

    private readonly record struct Place(string? Name, int Index)
    {
        public override string ToString() => Name ?? Index.ToString(System.Globalization.CultureInfo.InvariantCulture);

        public void Set(JsonNode parent, JsonNode? child)
        {
            if (Name is not null)
                parent[Name] = child;
            else
                parent[Index] = child;
        }
    }

    private sealed class MomentConverter : JsonConverter<DateTimeOffset>
    {
        public override DateTimeOffset Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Moments.Read(reader.GetString()!);

        public override void Write(Utf8JsonWriter writer, DateTimeOffset value, JsonSerializerOptions options) =>
            writer.WriteStringValue(Moments.Write(value));
    }

    // Plain text where words should be says only that there were some: they were erased, or there are none.
    private sealed class WordsConverter : JsonConverter<Words>
    {
        public override Words Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType switch
            {
                JsonTokenType.Null => default,
                JsonTokenType.String => Words.None,
                _ => new Words(JsonSerializer.Deserialize<Dictionary<string, string>>(ref reader)![WordsKey]),
            };

        public override void Write(Utf8JsonWriter writer, Words value, JsonSerializerOptions options)
        {
            if (value.Text is null)
                writer.WriteNullValue();
            else
                JsonSerializer.Serialize(writer, new Dictionary<string, string> { [WordsKey] = Whole(value.Text) });
        }
    }

    private static string Whole(string text) => Chain.Strict.GetString(Chain.Strict.GetBytes(text));

    private sealed class ListedConverters : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) =>
            typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(Listed<>);

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            (JsonConverter)
                Activator.CreateInstance(typeof(ListedConverter<>).MakeGenericType(typeToConvert.GenericTypeArguments))!;
    }

    private sealed class ListedConverter<T> : JsonConverter<Listed<T>>
    {
        public override Listed<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Listed.Of<T>(JsonSerializer.Deserialize<T[]>(ref reader, options));

        public override void Write(Utf8JsonWriter writer, Listed<T> value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, value.ToArray(), options);
    }

    /// <summary>Ids and codes of the trade: records of one value, written as that value.</summary>
    private sealed class NameConverters : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) =>
            typeToConvert is { IsValueType: true, Namespace: "Academy.Competence" }
            && typeToConvert != typeof(Words)
            && typeToConvert.GetProperty("Value") is { } value
            && (value.PropertyType == typeof(Guid) || value.PropertyType == typeof(string));

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            (JsonConverter)
                Activator.CreateInstance(
                    typeof(NameConverter<,>).MakeGenericType(typeToConvert, typeToConvert.GetProperty("Value")!.PropertyType)
                )!;
    }

    private sealed class NameConverter<TName, TValue> : JsonConverter<TName>
    {
        private static readonly PropertyInfo Value = typeof(TName).GetProperty("Value")!;

        private static readonly ConstructorInfo Make = typeof(TName).GetConstructor([typeof(TValue)])!;

        public override TName Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            (TName)Make.Invoke([JsonSerializer.Deserialize<TValue>(ref reader, options)]);

        public override void Write(Utf8JsonWriter writer, TName value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, (TValue?)Value.GetValue(value), options);
    }
}
