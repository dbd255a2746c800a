namespace Byrelaw.Language.Binding.Words;

/// <summary>Builds events, measures and tests from their declarations.</summary>
internal static class KindBuilder
{
    /// <summary>The kind; null where what it looks like is not known.</summary>
    public static Kind? Build(Declared declared, int id, Context context)
    {
        Kind? kind = declared.Line.Kind switch
        {
            DeclarationKind.Event => Event(declared, id, context),
            DeclarationKind.Measure => Measure(declared, id, context),
            _ => Test(declared, id, context),
        };
        var details = DetailBuilder.Build(declared, context.Names);
        return kind is null || details.IsEmpty ? kind : kind with { Details = details };
    }

    /// <summary>The unit that a clause names; null, and a problem, where it names none.</summary>
    public static Unit? Unit(UnitSyntax unit, Context context)
    {
        var found = UnitTable.Find(unit.Text);
        if (found is null)
        {
            context.Problems.Add(AmountProblems.UnknownUnit(unit.Span));
        }

        return found;
    }

    /// <summary>The first of each name, in the order of writing.</summary>
    public static ImmutableArray<string> Distinct(ImmutableArray<NameSyntax> names) =>
        [.. names.Select(name => name.Text).DistinctBy(NameFolding.Fold, StringComparer.Ordinal)];

    private static EventKind Event(Declared declared, int id, Context context)
    {
        foreach (var name in declared.Also.FindAll(name => DaysToCome.AreMeant(name.Text, declared.Line.Name.Text)))
        {
            context.Problems.Add(WordProblems.StillToCome(name.Span, name.Text, declared.Line.Name.Text));
            declared.Also.Remove(name);
        }

        return new EventKind(declared.Line.Name.Text, declared.AlsoNames, declared.Line.Name.Span)
        {
            Id = id,
            Effect = declared.Clause<HerdClause>() is { } herd ? herd.Joins ? HerdEffect.Joins : HerdEffect.Leaves : HerdEffect.None,
            IsForGood = declared.Clause<HerdClause>() is { ForGood: true },
            Marks = declared.Clause<MarksClause>() is { } marks ? MarksOf(marks, context) : Marks.Nothing,
            IsOfEmbryos = declared.Clause<OfEmbryosClause>() is not null,
            NotBeforeAge = declared.Clause<NotBeforeClause>() is { } before ? context.Length(before.Age) : null,
        };
    }

    private static Marks MarksOf(MarksClause clause, Context context)
    {
        switch (NameFolding.Fold(clause.What.Text))
        {
            case "treatment":
                return Marks.Treatment;
            case "collection":
                return Marks.Collection;
            case "transfer":
                return Marks.Transfer;
            default:
                context.Problems.Add(WordProblems.UnknownMark(clause.What.Span, NearestName.To(clause.What.Text, ["treatment", "collection", "transfer"])));
                return Marks.Nothing;
        }
    }

    private static MeasureKind? Measure(Declared declared, int id, Context context)
    {
        var name = declared.Line.Name;
        var inUnit = declared.Clause<InUnitClause>();
        var unit = inUnit is null ? null : Unit(inUnit.Unit, context);
        var scale = declared.Clause<ScaleClause>() is { } onScale ? Scale(onScale, context) : null;
        if (inUnit is null && declared.Clause<ScaleClause>() is null)
        {
            context.Problems.Add(WordProblems.MissingType(name.Span, name.Text, "`in` and a unit, or `on scale A to B`"));
        }

        return unit is null && scale is null ? null : new MeasureKind(name.Text, declared.AlsoNames, name.Span)
        {
            Id = id,
            Unit = unit,
            Scale = unit is null ? scale : null,
            MolarMass = MolarMass(declared, unit, context),
            Plausible = Plausible(declared, context),
            InTheYards = declared.Clause<InTheYardsClause>() is not null || unit is null
                || unit.Quantity is Quantity.Mass or Quantity.Length or Quantity.Temperature,
        };
    }

    /// <summary>The scale that a clause names; null, and a problem, where it goes backwards.</summary>
    public static Scale? Scale(ScaleClause clause, Context context)
    {
        if (clause.From.Value < clause.To.Value)
        {
            return new Scale(clause.From.Value, clause.To.Value);
        }

        context.Problems.Add(WordProblems.ScaleBackwards(clause.Span));
        return null;
    }

    /// <summary>The values that can be; null where nobody said, or (with a problem) where they go backwards.</summary>
    public static Scale? Plausible(Declared declared, Context context)
    {
        if (declared.Clause<PlausibleClause>() is not { } clause)
        {
            return null;
        }

        return clause.From.Value < clause.To.Value
            ? new Scale(clause.From.Value, clause.To.Value)
            : context.Fail<Scale>(WordProblems.PlausibleBackwards(clause.Span));
    }

    private static double? MolarMass(Declared declared, Unit? unit, Context context)
    {
        if (declared.Clause<MolarMassClause>() is not { } clause)
        {
            return null;
        }

        if (unit?.Quantity is not (Quantity.MassPerVolume or Quantity.MolesPerVolume or Quantity.MassPerMass or Quantity.MolesPerMass))
        {
            context.Problems.Add(WordProblems.MolarMassWithoutConcentration(clause.Span, declared.Line.Name.Text));
            return null;
        }

        if (clause.Value.Value is >= 1 and <= 1_000_000)
        {
            return clause.Value.Value;
        }

        context.Problems.Add(WordProblems.MolarMassOutOfRange(clause.Value.Span));
        return null;
    }

    /// <summary>Other names for answers; one that is another answer's, or that says that a calf was found where the answer does not, is a problem.</summary>
    private static ImmutableArray<(string Name, int Answer)> AnswersAlso(Declared declared, TestKind test)
    {
        var also = ImmutableArray.CreateBuilder<(string Name, int Answer)>();
        var taken = test.Answers.Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);
        foreach (var (answer, name, file) in declared.AnswersAlso)
        {
            var place = test.Answers.IndexOf(test.Answers.First(one => NameFolding.Fold(one) == NameFolding.Fold(answer.Text)));
            if (!taken.Add(NameFolding.Fold(name.Text)))
            {
                file.Problems.Add(WordProblems.ValueTwice(name.Span));
            }
            else if (OtherTests.Contradicts(name.Text, test.Answers[place], test))
            {
                file.Problems.Add(WordProblems.SaysInCalf(name.Span, name.Text, test.Answers[place]));
            }
            else
            {
                also.Add((name.Text, place));
            }
        }

        return also.ToImmutable();
    }

    private static TestKind? Test(Declared declared, int id, Context context)
    {
        var name = declared.Line.Name;
        if (declared.Clause<AnswersClause>() is not { } answers)
        {
            context.Problems.Add(WordProblems.MissingType(name.Span, name.Text, "`answers` and what they can be, such as `answers positive, negative`"));
            return null;
        }

        var test = new TestKind(name.Text, declared.AlsoNames, name.Span)
        {
            Id = id,
            Answers = Distinct(answers.Answers),
            InTheYards = declared.Clause<InTheYardsClause>() is not null,
        };
        return test with { AnswersAlso = AnswersAlso(declared, test) };
    }
}
