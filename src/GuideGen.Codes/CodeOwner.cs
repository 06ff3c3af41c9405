namespace GuideGen.Codes;

/// <summary>Who decides what a code means (SAE J2012 / ISO 15031-6, by the letter and the second character).</summary>
public enum CodeOwner
{
    /// <summary>Controlled by the standard. That does not say it is assigned: the meaning may be unknown.</summary>
    IsoSae,

    /// <summary>The vehicle maker's own: the same code means other things on other makes.</summary>
    Maker,

    /// <summary>Well formed, but kept back by the standard (B3 and C3); some makers use these all the same.</summary>
    Reserved,
}
