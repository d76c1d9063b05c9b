namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>What kind of figure a check is held against.</summary>
public enum SourceKind
{
    /// <summary>Printed in the source named, and seen there or in an open data set that quotes it.</summary>
    Published,

    /// <summary>Printed in the source named, quoted from memory.</summary>
    FromMemory,

    /// <summary>A workshop's rule of thumb without a published source.</summary>
    CommonPractice,

    /// <summary>Computed independently for this project; no outside authority, but another hand.</summary>
    Derived,
}
