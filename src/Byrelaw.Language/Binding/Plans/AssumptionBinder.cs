namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds one <c>assume</c>: a rate, a number or a price.</summary>
internal sealed class AssumptionBinder(Context context, RuleFile file, Block block)
{
    private static readonly string[] AnimalWords = [" in cows", " in heifers"];

    private readonly AssumeLine _line = (AssumeLine)block.Head!;

    private string? Because => block.First<BecauseLine>()?.Reason.Value;

    private SourceSpan WithUnit => _line.Unit is { } unit ? _line.Value.Span.To(unit.Span) : _line.Value.Span;

    private string? Source => block.First<SourceLine>()?.Source.Value;

    /// <summary>Whether it says why; a count or an opinion with its weight is a reason too.</summary>
    public bool HasReason => Because is not null || Source is not null || _line.Evidence.Any(one => one is WeightSyntax or CountedSyntax);

    /// <summary>An <see cref="Assumption"/> or a <see cref="CostLine"/>, with the words it is known by; null where it cannot be told.</summary>
    public (string Words, object Value)? Bind()
    {
        var words = NameFolding.Fold(_line.Quantity.Text);
        foreach (var (start, per) in QuantityTable.Costs)
        {
            if (words == start || (words == start + " by" && per == CostUnit.AnimalTreated && _line.Method is not null))
            {
                return Cost(per) is { } cost ? ($"{start}{(cost.Method is null ? "" : $" by \"{cost.Method}\"")}", cost) : null;
            }
        }

        // `of "1021"` ends the words where a donor has a line of her own.
        var donor = _line.Donor?.Value;
        var ofAll = donor is null ? words : words[..^3];
        foreach (var (start, quantity) in QuantityTable.Quantities)
        {
            if ((ofAll == start || ofAll.StartsWith(start + " ", StringComparison.Ordinal)) && _line.Method is null && (donor is null || QuantityTable.IsOfADonor(quantity))
                && Cases(quantity, ofAll[start.Length..].Trim()) is { } cases)
            {
                return Assumption(cases with { Donor = donor }) is { } bound ? (start + QuantityTable.Cases(bound), bound) : null;
            }
        }

        return context.None<(string, object)>(AssumeProblems.Unknown(_line.Quantity.Span, Nearest(words)));
    }

    /// <summary>The words that may be meant, those after the quantity's own kept as they are; null where none are near.</summary>
    private static string? Nearest(string words)
    {
        var written = words.Split(' ');
        return NearestName.To(words, QuantityTable.Quantities.Select(entry => entry.Words).Concat(QuantityTable.Costs.Select(entry => entry.Words))
            .Select(known => string.Join(' ', written.Skip(known.Split(' ').Length).Prepend(known)))
            .Where(candidate => candidate != words));
    }

    private CostLine? Cost(CostUnit per)
    {
        if (_line.IsShare || _line.Unit is null)
        {
            return context.Fail<CostLine>(AssumeProblems.WrongValue(_line.Value.Span, QuantityTable.Words(per), "an amount of money such as `55 NZD`", null));
        }

        return context.Money(_line.Value, _line.Unit) is { } amount
            ? new CostLine(per, _line.Method?.Value, amount, Spread(), Because, Source, block.Span) : null;
    }

    /// <summary>What follows the words of a quantity: which embryos, animals, semen, breed; null where it is anything else.</summary>
    private Assumption? Cases(AssumedQuantity quantity, string rest)
    {
        var one = new Assumption { Quantity = quantity, Span = block.Span };
        if (quantity == AssumedQuantity.Gestation && rest.StartsWith("of ", StringComparison.Ordinal))
        {
            var breed = Written("of ", rest);
            (one, rest) = (one with { Breed = breed }, rest[(3 + breed.Length)..].Trim());
        }

        (string Words, Func<Assumption, Assumption> Apply)[] cases =
        [
            ("fresh", said => said with { State = EmbryoState.Fresh }), ("frozen", said => said with { State = EmbryoState.Frozen }),
            ("in cows", said => said with { In = Carrier.Cows }), ("in heifers", said => said with { In = Carrier.Heifers }),
            .. QuantityTable.IsToldOfDryCows(quantity) ? [("in dry cows", said => said with { In = Carrier.DryCows })] : Array.Empty<(string, Func<Assumption, Assumption>)>(),
            ("with sexed semen", said => said with { WithSexedSemen = true }),
        ];
        foreach (var (words, apply) in cases)
        {
            if (rest == words || rest.StartsWith(words + " ", StringComparison.Ordinal))
            {
                (one, rest) = (apply(one), rest[words.Length..].Trim());
            }
        }

        return rest.Length == 0 ? one : null;
    }

    /// <summary>The breed in its written spelling, up to another case.</summary>
    private string Written(string before, string rest)
    {
        var end = Math.Max(before.Length, AnimalWords.Select(words => rest.IndexOf(words, StringComparison.Ordinal)).Where(at => at > 0).DefaultIfEmpty(rest.Length).Min());
        var text = _line.Quantity.Text;
        var start = text.Length - rest.Length + before.Length;
        return start + end - before.Length <= text.Length ? text[start..(start + end - before.Length)].Trim() : rest[before.Length..end].Trim();
    }

    private Assumption? Assumption(Assumption cases)
    {
        var said = cases with
        {
            Because = Because,
            Source = Source,
            Agreement = block.First<AgreedByLine>() is { } agreed ? new Agreement([.. agreed.By.Select(by => by.Value)], agreed.On.Value) : null,
            Basis = file.IsRoot ? Basis.Local : Basis.Base,
        };
        if (QuantityTable.IsNumber(cases.Quantity))
        {
            var isDays = cases.Quantity is AssumedQuantity.Gestation or AssumedQuantity.DaysOfKeepPerRecipient;
            var unit = _line.Unit is null ? "" : NameFolding.Fold(_line.Unit.Text);
            if (_line.IsShare || _line.Value.Value < 0 || unit != (isDays ? "days" : ""))
            {
                var days = _line.Value.Value * (unit is "week" or "weeks" ? 7 : 1);
                return context.Fail<Assumption>(AssumeProblems.WrongValue(
                    WithUnit, QuantityTable.Words(cases.Quantity), isDays ? "a number of days such as `280 days`" : "a number such as `9`",
                    isDays ? $"{NumberText.Of(days)} days" : NumberText.Of(_line.Value.Value)));
            }

            var spread = Spread(!isDays);
            return said with { Mean = _line.Value.Value, Spread = spread, Weight = _line.Evidence.OfType<WeightSyntax>().FirstOrDefault()?.Animals.Value };
        }

        if (!_line.IsShare)
        {
            var percent = _line.Value.Value * (_line.Value.Value < 1 ? 100 : 1);
            return context.Fail<Assumption>(AssumeProblems.WrongValue(
                WithUnit, QuantityTable.Words(cases.Quantity), "a share such as `45%`", $"{NumberText.Of(Math.Round(percent, 6))}%"));
        }

        if (!HasReason && !block.IsBroken)
        {
            context.Problems.Add(AssumeProblems.TakenAsExact(_line.Span));
        }

        return context.Share(_line.Value, _line.Evidence) is { } share ? said with { Share = share } : null;
    }

    /// <param name="weighed">Whether the number may say how many collections or flushes it is worth.</param>
    private double? Spread(bool weighed = false)
    {
        double? spread = null;
        foreach (var evidence in _line.Evidence)
        {
            switch (evidence)
            {
                case SpreadSyntax { Value.Value: >= 0 } one when spread is null:
                    spread = one.Value.Value;
                    break;
                case WeightSyntax { Animals.Value: > 0 } when weighed:
                    weighed = false;
                    break;
                default:
                    context.Problems.Add(PlanProblems.EvidenceDoesNotFit(
                        evidence.Span, "a number has one `, spread 6`, and one of oocytes or embryos a `, weight 20`; a count goes with a share"));
                    break;
            }
        }

        return spread;
    }
}
