<#
.SYNOPSIS
Draws the invented figure and does the main job on it: reads, renames, mirrors, sums up, makes contact sheets, saves.
.DESCRIPTION
Every command that is shown is run, and what follows it is its answer. Writes to the output folder only.
#>
[CmdletBinding()]
param(
    [Parameter(Mandatory)]
    [string] $ModuleFolder,

    [Parameter(Mandatory)]
    [string] $OutputFolder
)

Set-StrictMode -Version 3.0
$ErrorActionPreference = 'Stop'
$watch = [Diagnostics.Stopwatch]::StartNew()

# Called with a dot, so that a command's variables are there for the next one.
function Step([string] $Story, [scriptblock] $Command) {
    if ($Story) { Write-Host "`n$Story" }
    $lines = $Command.ToString().Trim("`r", "`n") -split '\r?\n'
    $indent = ($lines[0] -replace '\S.*$').Length
    Write-Host ''
    $lines | ForEach-Object { Write-Host "  > $(if ($_.Length -gt $indent) { $_.Substring($indent) })" -ForegroundColor Cyan }
    . $Command 2>&1 3>&1 | ForEach-Object { Format-Answer $_ } | Out-String -Stream -Width 140 |
        ForEach-Object { $_.TrimEnd() } | Where-Object { $_ } | ForEach-Object { Write-Host "    $_" }
}

# Errors and warnings as sentences that fit the page; everything else as it is.
function Format-Answer($Answer) {
    $text = switch ($Answer) {
        { $_ -is [Management.Automation.ErrorRecord] } { "$($_.InvocationInfo.MyCommand.Name): $($_.Exception.Message)" }
        { $_ -is [Management.Automation.WarningRecord] } { "Warning: $($_.Message)" }
        default { return $Answer }
    }
    $text -replace '(.{1,116})(\s+|$)', "`$1`n" -split '\n'
}

function Title([string] $Text) { Write-Host "`n$Text`n$('-' * $Text.Length)" -ForegroundColor Yellow }

if (Test-Path -LiteralPath $OutputFolder) { Remove-Item -LiteralPath $OutputFolder -Recurse -Force }
$OutputFolder = (New-Item -ItemType Directory -Path $OutputFolder -Force).FullName
Import-Module $ModuleFolder -Force
if ($PSVersionTable.PSVersion.Major -ge 7) { $PSStyle.OutputRendering = 'PlainText' }
Set-Location -LiteralPath $OutputFolder
Copy-Item -LiteralPath (Join-Path $PSScriptRoot 'names.csv') -Destination .
$project = (Resolve-Path -LiteralPath $PSScriptRoot -Relative).Replace('\', '/')

Title 'The figure'
Write-Host @'
An artist has drawn a lighthouse keeper's apprentice who will be animated: every part that will move is a layer.
The names are what was left at the end of a long night, and only the left arm, eye and ear exist. All of it is invented.
Drawing it takes about 15 seconds and 600 MB of memory; out/demo will hold 220 MB.
'@
. Step '' ([scriptblock]::Create("  dotnet run --project $project --configuration Release --verbosity quiet -- figure.psd --png figure-before.png"))
if ($LASTEXITCODE -ne 0) { throw "The figure could not be drawn." }

Title '1. What is in the file?'
. Step 'The facts and the tree. Reading them touches no pixels, so it is quick however large the file is.' {
    $figure = Get-LayerFile figure.psd
    $figure | Format-List Name, Width, Height, Ppi, Axis, LayerCount, PendingCount
}
. Step '' {
    $figure | Format-LayerTree | Select-Object -First 36
}
. Step 'Every part in a picture, as it came:' {
    $figure | Export-LayerSheet -Path sheet-before.png | Format-Table Name, Length
}
. Step 'How much is done? Green marks mean done; parts whose opposite is missing are counted apart.' {
    $figure | Measure-LayerStatus
}

Title '2. Names'
. Step 'Look before leaping: what would a pattern do?' {
    $figure | Rename-Layer -Match '\s*copy(\s\d+)?$' -Replacement '' -Preview
}
. Step 'A careless pattern would give siblings the same name. It is refused, each clash is named, and nothing has changed:' {
    $figure | Rename-Layer -Match '^Layer \d+$' -Replacement 'Strand' -ErrorAction Continue
}
. Step 'For names in another language, and for those that say nothing, there is a list:' {
    Import-Csv names.csv -Encoding utf8 | Select-Object -First 6
}
. Step 'Now in earnest. Spaces at the ends, leftovers of copying and underscores go, the list is applied, strands are numbered, and names begin with a capital.' {
    $figure |
        Rename-Layer -Match '^\s+|\s*(copy(\s\d+)?)?\s*$' -Replacement '' |
        Rename-Layer -Match '_' -Replacement ' ' |
        Rename-Layer -Match '(?<=[a-z])(\d)' -Replacement ' $1' |
        Rename-Layer -Map names.csv |
        Rename-Layer -Name 'Layer *' -NewName 'Strand ' -Number |
        Rename-Layer -NewName { $_.Name.Substring(0, 1).ToUpperInvariant() + $_.Name.Substring(1) }
}

Title '3. From left to right'
. Step 'Everything that is called left and has no right is reflected across the centre line, exact to the pixel, with masks, clipping and names.' {
    $figure | Copy-LayerMirror -From Left
}
. Step "The left edge of one and the right edge of the other sum up to twice the axis, 5000:" {
    $figure | Get-Layer -LayerPath 'Arm ?', 'Arm ?/Hand ?', 'Arm ?/Sleeve ?', 'Face/Eye ?' |
        Format-Table LayerPath, Side, Left, @{ Name = 'Right'; Expression = { $_.Left + $_.Width } }, Width, Mark
}

Title '4. Hand over'
. Step 'Reflected parts are not marked: somebody should look at them first. So less is done than before, and nothing is missing.' {
    $figure | Measure-LayerStatus
}
. Step '' {
    $figure | Export-LayerSheet -Path sheet-after.png | Format-Table Name, Length
}
. Step 'The list of changes is the way back. Everything so far was pending; only now a file is written, and the original stays as it is.' {
    $figure.Changes | Export-Csv undo.csv -Encoding utf8
    $before = Get-FileHash figure.psd
    $figure | Save-LayerFile -Destination ready | Format-Table Name, Length
    (Get-FileHash figure.psd).Hash -eq $before.Hash
}
. Step 'The merged picture was redrawn in the file. This is what other programs will show:' ([scriptblock]::Create("  dotnet run --project $project --configuration Release --no-build -- ready/figure.psd --drawn --png figure-after.png"))
. Step 'Proof of the way back: the saved file, with the first of its old names.' {
    Get-LayerFile ready/figure.psd | Rename-Layer -Map undo.csv -Reverse -Preview | Select-Object -First 8
}

Title '5. For the rig'
. Step 'A rig takes plain parts. Masks, clipping and shadows are baked into them, and the picture is proved to stay the same.' {
    Get-LayerFile ready/figure.psd | ConvertTo-RigFile 3>$null | Save-LayerFile -Destination rig | Format-Table Name, Length
}
. Step 'What became of each part. Those that glow use blend modes that only show on what is behind them, so the modes stay and are told:' {
    Get-LayerFile ready/figure.psd | ConvertTo-RigFile -Report 3>$null | Select-Object -First 9
}
. Step 'Every part as a picture, with a list of where it belongs:' {
    $parts = Get-LayerFile rig/figure.psd | Export-LayerImage -Destination parts
    $parts | Select-Object -First 4 | Format-Table Name, Length
}

Title 'Where to look'
$notes = [ordered]@{
    'figure-before.png'       = 'the figure as the artist left it'
    'figure-after.png'        = 'the figure as it is handed over'
    'sheet-before.png'        = 'its parts before; more pages beside it'
    'sheet-after.png'         = 'its parts after; more pages beside it'
    'figure.psd'              = 'the layered file as the artist left it, untouched'
    'ready/figure.psd'        = 'the layered file to hand over'
    'rig/figure.psd'          = 'the same in plain parts'
    'parts/figure/layers.csv' = 'the pictures of all parts are beside this list'
    'names.csv'               = 'the list of old and new names'
    'undo.csv'                = 'every change; Rename-Layer -Map undo.csv -Reverse takes the names back'
}
foreach ($path in $notes.Keys) {
    Write-Host ('  {0,-26}{1,7:N1} MB  {2}' -f $path, ((Get-Item -LiteralPath $path).Length / 1MB), $notes[$path])
}
Write-Host "`nAll of it is in $OutputFolder. The whole story took $([int] $watch.Elapsed.TotalSeconds) seconds."
