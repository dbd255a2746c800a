namespace Byrelaw.Reporting.Json;

/// <summary>A plan for programs. Days are ISO 8601, shares from 0 to 1, money in the budget's currency; a value that is not there is null.</summary>
/// <param name="Programme">The programme's name.</param>
/// <param name="JudgedWith">The program and its version.</param>
/// <param name="Rulebook">Its fingerprint.</param>
/// <param name="Records">Theirs.</param>
/// <param name="KnownDay">The day that the records reach.</param>
/// <param name="Today">The day of planning.</param>
/// <param name="Sessions">Those that are not over, with who is named.</param>
/// <param name="Mornings">What is done on which morning, as previews.</param>
/// <param name="Tasks">What must be done by when.</param>
/// <param name="Calendar">All entries in order.</param>
/// <param name="Wants">What is wanted.</param>
/// <param name="WithThoseNamed">What comes of it with those named; where nobody is named by name, of the season as planned.</param>
/// <param name="IfUsable">If as many of those asked about are usable as the programme takes to be.</param>
/// <param name="IfAllPass">If all that is asked turns out well.</param>
/// <param name="Yardsticks">What people quote, held against it.</param>
/// <param name="WhatMatters">Assumptions, the one that matters most first.</param>
/// <param name="Methods">Every method that can still start.</param>
/// <param name="WhoCarries">Cows in milk, dry cows and heifers; empty where nobody is named.</param>
/// <param name="Decisions">Go or no-go, by the day.</param>
public sealed record PlanJson(
    string Programme, string JudgedWith, string Rulebook, string Records, string KnownDay, string Today, IReadOnlyList<PlanSessionJson> Sessions,
    IReadOnlyList<MorningJson> Mornings, IReadOnlyList<PlanTaskJson> Tasks,
    IReadOnlyList<PlanEntryJson> Calendar, WantsJson? Wants, OutcomeJson? WithThoseNamed, OutcomeJson? IfUsable, OutcomeJson? IfAllPass,
    IReadOnlyList<YardstickJson> Yardsticks, IReadOnlyList<MatterJson> WhatMatters, IReadOnlyList<MethodJson> Methods, IReadOnlyList<CarrierJson> WhoCarries,
    IReadOnlyList<DecisionJson> Decisions);

/// <summary>One session, with those named, to ask about, spare and watched.</summary>
public sealed record PlanSessionJson(
    int Session, string? Collection, string FirstTransfer, string FinalTransfer, int? Wanted, int? Short, IReadOnlyList<NamedJson> Named, IReadOnlyList<NamedJson> ToAsk,
    IReadOnlyList<NamedJson> Spares, IReadOnlyList<NamedJson> Watched, IReadOnlyList<NamedJson> WatchedIfKnown, IReadOnlyList<string> BookedAndOut, IReadOnlyList<string> BegunAndNotNamed,
    IReadOnlyList<string> Donors, IReadOnlyList<string> DonorsToAsk, IReadOnlyList<string> DonorsNotInTime);

/// <summary>An animal with what is planned of her.</summary>
public sealed record NamedJson(string Animal, string Method, string DayZero, bool Begun, bool Booked);

/// <summary>A task with its days and whom it is for.</summary>
public sealed record PlanTaskJson(string Task, int Session, string Due, string LastStart, string? NotBefore, bool Done, int DaysPast, bool ForAnimals, IReadOnlyList<string> Animals);

/// <summary>A decision to go on or not; sums are null where nothing has a price, and at least so much where something has none. <c>said</c> is <c>go</c>, <c>stopped</c>, <c>nothing</c> past its day, and null before.</summary>
public sealed record DecisionJson(
    string Task, int Session, string By, IReadOnlyList<string> DecidedBy, string IfStopped, double? Spent, double? StoppingStillCosts, bool AtLeast, string? Said, string? SaidOn);

/// <summary>An entry of the calendar; its id stays when its days move.</summary>
public sealed record PlanEntryJson(string Id, string Kind, string From, string To, int? Session, string What);

/// <summary>What is wanted, and how surely.</summary>
public sealed record WantsJson(string What, int Count, double Sure);

/// <summary>What comes of a season, stage by stage, and what it costs; no chance where nothing is wanted, no budget where nothing has a price or it is not worked out.</summary>
public sealed record OutcomeJson(IReadOnlyList<StageJson> Stages, double? Chance, int? CountedOn, double? Thawed, BudgetJson? Budget);

/// <summary>One stage: in one season of ten fewer than poor, in one more than good.</summary>
public sealed record StageJson(string Stage, int Poor, int Middling, int Good, double Mean, double? Rate, double? RateFromTheTank);

/// <summary>What a season costs; where something has no price, at least so much, and no chance within the limit is given.</summary>
public sealed record BudgetJson(
    string Currency, double Total, bool AtLeast, double Low, double High, double? Limit, double? ChanceWithinLimit, double? EachTransfer, double? EachLiveHeifer,
    IReadOnlyList<ChargeJson> Lines, IReadOnlyList<string> WithoutPrice, IReadOnlyList<PayerJson> PaidBy);

/// <summary>One line of a budget.</summary>
public sealed record ChargeJson(string What, double Price, double Number, double Amount);

/// <summary>What one who shares the costs pays; who is null for what nobody is said to pay.</summary>
public sealed record PayerJson(string? Who, double Amount);

/// <summary>A figure that people quote, and the plan's own; without is null where no part explains the difference.</summary>
public sealed record YardstickJson(string? Method, double Said, string? Currency, double? Here, bool AtLeast, IReadOnlyList<YardstickPartJson> Parts, IReadOnlyList<string>? Without);

/// <summary>One part of it, and the product or sum so far.</summary>
public sealed record YardstickPartJson(string Part, double Value, double SoFar);

/// <summary>What to expect of what is wanted, were one assumption known to be low, or high.</summary>
public sealed record MatterJson(string What, double Low, double High, bool TakenAsExact, double AtLow, double AtHigh, double Difference);

/// <summary>One method beside the others.</summary>
public sealed record MethodJson(string Method, bool Chosen, IReadOnlyList<int> Sessions, int Sure, int ToAsk, double Used, double? EachAccepted, double? EachLiveHeifer, bool AtLeast);

/// <summary>One sort of recipients beside the others; <c>bought_in</c> is how many more would bring <c>more</c> of what is wanted.</summary>
public sealed record CarrierJson(string Recipients, int Sure, int ToAsk, double? Pregnant, double? Weight, string? Source, double? EachLiveCalf, bool AtLeast, int? BoughtIn, double? More, double? Chance);
