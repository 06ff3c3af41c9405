using System.Text.Json;
using System.Text.Json.Serialization;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Site.Preview;
using GuideGen.Site.Views;

namespace GuideGen.Site.Rendering;

/// <summary>How what scripts are given is written as JSON: by code that the build makes, so that the tool starts sooner and can be trimmed.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    GenerationMode = JsonSourceGenerationMode.Metadata,
    Converters = [typeof(PackedRowJson), typeof(GroupRuleJson)])]
[JsonSerializable(typeof(WeighData))]
[JsonSerializable(typeof(ReadingData))]
[JsonSerializable(typeof(MoneyData))]
[JsonSerializable(typeof(PreviewNews))]
[JsonSerializable(typeof(SortedDictionary<string, string>))]
sealed partial class SiteJson : JsonSerializerContext
{
    sealed class GroupRuleJson() : JsonStringEnumConverter<GroupRule>(JsonNamingPolicy.CamelCase);
}
