namespace GuideGen.Codes.Reading;

/// <summary>Where a text comes from, which decides how bold its reading may be.</summary>
public enum ReadingPlace
{
    /// <summary>A pasted report or prose: what merely looks like a code is left alone.</summary>
    FreeText,

    /// <summary>A box that asks for a code: whatever was typed is meant as one.</summary>
    LookUpBox,
}
