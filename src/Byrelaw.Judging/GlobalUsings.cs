// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Collections.Immutable;
global using Byrelaw.Judging.Criteria;
global using Byrelaw.Judging.Days;
global using Byrelaw.Judging.Explaining;
global using Byrelaw.Judging.Herdmates;
global using Byrelaw.Judging.Lists;
global using Byrelaw.Judging.Mobs;
global using Byrelaw.Judging.Spells;
global using Byrelaw.Judging.Truths;
global using Byrelaw.Judging.Verdicts;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Conditions;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Records.Herds;
global using Byrelaw.Workshop.Comparing;
global using Byrelaw.Workshop.Tuning;
global using NodaTime;
