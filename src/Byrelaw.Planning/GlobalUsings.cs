// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Collections.Immutable;
global using Byrelaw.Judging;
global using Byrelaw.Judging.Truths;
global using Byrelaw.Judging.Verdicts;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Plans;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Planning.Budgeting;
global using Byrelaw.Planning.Calendar;
global using Byrelaw.Planning.Chances;
global using Byrelaw.Planning.Forecasting;
global using Byrelaw.Planning.Naming;
global using Byrelaw.Planning.Recipients;
global using Byrelaw.Planning.Seasons;
global using Byrelaw.Planning.Visiting;
global using Byrelaw.Records.Herds;
global using NodaTime;
