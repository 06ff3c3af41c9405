using System.Collections.Immutable;
using GuideGen.Codes.Raw;

namespace GuideGen.Codes.Reading;

/// <summary>Reads codes from whatever an owner types or pastes: prose, a report of a code reader, the bytes of a bus.</summary>
public static class CodeReader
{
    /// <summary>Never fails and takes linear time on any text. Positions count in UTF-16 units of <paramref name="text"/>.</summary>
    public static CodeReading Read(string text, ReadingPlace place)
    {
        var page = new PageReader(text, Folding.Fold(text), place);
        page.ReadLines();
        return page.Finish();
    }

    /// <summary>Goes through the lines; neighbouring lines of bytes are kept until their block is whole.</summary>
    sealed class PageReader
    {
        readonly string folded;
        readonly ReadingPlace place;
        readonly string text;
        readonly TextLine line;
        readonly CodeMatcher matcher;
        readonly FindList finds;
        readonly StatusTrail trail;
        readonly HexBlock block = new();
        readonly List<RawAnswer> answers = [];

        internal PageReader(string text, string folded, ReadingPlace place)
        {
            (this.text, this.folded, this.place) = (text, folded, place);
            line = new(folded);
            matcher = new(line, place);
            finds = new(text);
            trail = new(line, finds, text);
        }

        internal void ReadLines()
        {
            for (var start = 0; start <= folded.Length;)
            {
                var length = folded.AsSpan(start).IndexOf('\n');
                var end = length < 0 ? folded.Length : start + length;
                ReadLine(start, end);
                start = end + 1;
            }
            CloseBlock();
        }

        internal CodeReading Finish()
        {
            if (finds.Count == 0 && answers.Count == 0 && place == ReadingPlace.LookUpBox)
                ReadAsOneCode();
            return new(finds.ToImmutable(), [.. answers]);
        }

        void ReadLine(int start, int end)
        {
            if (block.TryAdd(folded, start, end))
                return;
            if (!AdapterNoise.IsNoise(folded.AsSpan(start, end - start)))
                CloseBlock();
            ReadText(start, end);
        }

        void ReadText(int start, int end)
        {
            line.Fill(start, end);
            matcher.MatchLine();
            trail.ReadLine(matcher.Matches);
        }

        // Bytes that are no answer may still be words: "0299" in the look-up box, say.
        void CloseBlock()
        {
            if (block.Lines.Count == 0)
                return;
            var before = answers.Count;
            answers.AddRange(RawAnswers.Read(block));
            for (var i = before; i < answers.Count; i++)
                AddCodes(answers[i]);
            if (answers.Count == before)
            {
                foreach (var bytes in block.Lines)
                    ReadText(bytes.Start, bytes.End);
            }
            block.Clear();
        }

        void AddCodes(RawAnswer answer)
        {
            AddCodes(answer, answer.Codes);
            AddCodes(answer, answer.OtherReading);
        }

        void AddCodes(RawAnswer answer, ImmutableArray<RawCode> codes)
        {
            foreach (var code in codes)
            {
                var index = finds.Add(code.Reported, code.Start, code.End, answer.Certainty, answer.Source);
                finds.AddStatus(index, answer.Service.Status());
            }
        }

        // "P02 99" or "P.0.2.9.9": in a box that asks for a code, only the letters and digits count.
        void ReadAsOneCode()
        {
            Span<char> core = stackalloc char[TroubleCode.Length];
            int length = 0, start = 0, end = 0;
            for (var i = 0; i < folded.Length; i++)
            {
                if (!char.IsLetterOrDigit(folded[i]))
                    continue;
                if (length == core.Length)
                    return;
                start = length == 0 ? i : start;
                core[length++] = folded[i];
                end = i + 1;
            }
            if (CodeShape.TryRead(core[..length], out var code, out _))
                finds.Add(new(code), start, end, Certainty.Repaired, null);
        }
    }
}
