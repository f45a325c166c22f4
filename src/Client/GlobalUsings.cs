global using System.Globalization;
global using Witnessmark.Handbook.Languages;
global using static Witnessmark.Client.Languages.Spoken;
