using System.Text;
using System.Xml;

namespace GuideGen.Site.Publishing;

/// <summary>XML as UTF-8 bytes, the same on every system.</summary>
static class XmlText
{
    static readonly XmlWriterSettings Settings = new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, NewLineChars = "\n" };

    public static byte[] Write(Action<XmlWriter> write)
    {
        using var stream = new MemoryStream();
        using (var xml = XmlWriter.Create(stream, Settings))
        {
            xml.WriteStartDocument();
            write(xml);
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }
}
