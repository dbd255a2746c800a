namespace Byrelaw.Planning.Carrying;

/// <summary>A season with more recipients of one sort: it is told as if all who are asked about pass, for of nobody nothing is brought.</summary>
internal sealed class BoughtRecipients
{
    private readonly SeasonInputs _inputs;
    private readonly SessionsByName _season;
    private readonly int[] _more;
    private readonly bool _fills;
    private readonly int _animals;
    private readonly Counts _now;

    private BoughtRecipients(SeasonInputs inputs, SessionsByName season, int[] more, bool fills, int animals, Counts now) =>
        (_inputs, _season, _more, _fills, _animals, _now) = (inputs, season, more, fills, animals, now);

    /// <summary>Null where nothing can be forecast.</summary>
    /// <param name="inputs">The season's.</param>
    /// <param name="open">Its sessions that are not over and not given up.</param>
    public static BoughtRecipients? Of(SeasonInputs inputs, ImmutableArray<NamedSession> open)
    {
        if (SessionsByName.Of(open, ifAllPass: true) is not { } season || Wanted(inputs, season.Sessions, season.Carriers) is not { } now)
        {
            return null;
        }

        int[] empty = [.. open.Select(session => Math.Max(0, (session.Wanted ?? 0) - session.Named.Length - session.ToAsk.Length))];
        var fills = empty.Any(places => places > 0);
        return new(inputs, season, fills ? empty : [.. empty.Select(_ => 1)], fills, open.Sum(session => session.Named.Length + session.ToAsk.Length), now);
    }

    /// <summary>With as many of one sort as there are empty places, or one for each session.</summary>
    public BoughtIn? OfSort(Carrier carrier)
    {
        var bought = _more.Sum();
        ImmutableArray<SessionSize> sessions = [.. _season.Sessions.Select((session, i) => session with
        {
            Treated = session.Treated.SetItem(0, session.Treated[0] with { Animals = session.Treated[0].Animals + _more[i] }),
        })];
        return Wanted(_inputs, sessions, _season.Carriers.With(carrier, bought, _animals)) is { } then
            ? new(bought, _fills, then.Mean - _now.Mean, _inputs.Aims.Wants is { } wants ? then.AtLeast(wants.Count) - _now.AtLeast(wants.Count) : null) : null;
    }

    private static Counts? Wanted(SeasonInputs inputs, ImmutableArray<SessionSize> sessions, CarrierShares carriers)
    {
        if (ChainReading.Of(inputs.Plans, inputs.Aims, carriers).Chain is not { } chain || sessions.IsEmpty)
        {
            return null;
        }

        return new Forecaster(chain.Goal is null ? chain with { Goal = new(WhatMatters.Counted(chain), 1, 0.5) } : chain, isRough: true).Wanted(sessions);
    }
}
