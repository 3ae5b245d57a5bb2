<#
.SYNOPSIS
Draws the invented figure and does the main job on it: reads, renames, mirrors, sums up, makes contact sheets, saves; then checks whether it is ready to rig.
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
Drawing it takes about 15 seconds and 600 MB of memory; out/demo will hold 300 MB.
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
. Step 'Now in earnest. Spaces at the ends, leftovers of copying and underscores go, the list is applied, strands are numbered, what lies in the eye is told apart by its side, and names begin with a capital.' {
    $figure |
        Rename-Layer -Match '^\s+|\s*(copy(\s\d+)?)?\s*$' -Replacement '' |
        Rename-Layer -Match '_' -Replacement ' ' |
        Rename-Layer -Match '(?<=[a-z])(\d)' -Replacement ' $1' |
        Rename-Layer -Map names.csv |
        Rename-Layer -Name 'Layer *' -NewName 'Strand ' -Number |
        Rename-Layer -LayerPath 'Face/Eye L/*' -NewName { $_.Name + ' L' } |
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

Title '6. The rules of the house'
. Step 'The figure for the rig was approved. What it shows by example becomes the profile of the studio, a text that can be read and changed:' {
    New-LayerProfile -FromFile rig/figure.psd -Destination studio.layerprofile.json 3>$null > $null
    Get-Content studio.layerprofile.json -TotalCount 21 | Select-Object -Skip 4
}
. Step 'Two words of this studio are in no vocabulary. They are taught, and the profile is checked for slips; no answer means none.' {
    $studio = Get-Content studio.layerprofile.json -Raw | ConvertFrom-Json
    $studio.naming.vocabulary.parts = @(
        @{ key = 'visor'; english = 'visor'; japanese = 'つば'; zone = 'headwear' }
        @{ key = 'lapel'; english = 'lapel'; japanese = '襟'; zone = 'outerwear'; paired = $true })
    $studio | ConvertTo-Json -Depth 9 | Set-Content studio.layerprofile.json -Encoding utf8
    Test-LayerProfile studio.layerprofile.json
}
. Step 'The approved file has to pass, or the rules are wrong. Notes are let through; warnings and errors are not.' {
    Test-LayerFile rig/figure.psd -Profile studio.layerprofile.json -Quiet
}

Title '7. Is it ready to rig?'
. Step 'The file comes in as the artist left it; let the neck have slipped in front of the head as well. A finding says what is wrong, where, how much, and what to do.' {
    $delivery = Get-LayerFile figure.psd | Move-Layer -LayerPath neck -Before Head
    $before = $delivery | Test-LayerFile -Profile studio.layerprofile.json -Severity Warning
    $before | Sort-Object Rule -Unique
    ($before | Where-Object Rule -eq StackOutOfOrder).Remedy
}
. Step 'For a system that runs checks by itself, the same goes into a log (SARIF); the answer is a yes or no.' {
    $delivery | Test-LayerFile -Profile studio.layerprofile.json -Quiet -AsSarif before.sarif
}
. Step 'Names can be taken apart and written in the form of the profile, whatever language they came in. What is not understood is left and told why.' {
    $delivery | Rename-Layer -Normalize -Profile studio.layerprofile.json -Preview 3>$null | Select-Object -Skip 6 -First 11
}
. Step 'Now everything in one go: the list, strands and eye as before, then the form; the right side; the order of the stack; the safe repairs; plain parts. The original stays as it is.' {
    $delivery |
        Rename-Layer -Map names.csv |
        Rename-Layer -Name 'Layer *' -NewName 'Strand ' -Number |
        Rename-Layer -LayerPath 'Face/eye L */*' -NewName { $_.Name + ' L' } |
        Rename-Layer -Normalize -Profile studio.layerprofile.json 3>$null |
        Copy-LayerMirror -From Left |
        Set-LayerOrder -Profile studio.layerprofile.json |
        Repair-LayerFile -Profile studio.layerprofile.json |
        ConvertTo-RigFile 3>$null |
        Save-LayerFile -Destination checked | Format-Table Name, Length
}
. Step 'Checked again. A yes means: no warnings, no errors.' {
    $after = Test-LayerFile checked/figure.psd -Profile studio.layerprofile.json -Severity Warning
    $before + $after | Group-Object Rule | Sort-Object Name | Format-Table @{ Name = 'Rule'; Expression = 'Name' },
        @{ Name = 'Before'; Expression = { @($_.Group | Where-Object { $_ -in $before }).Count } },
        @{ Name = 'After'; Expression = { @($_.Group | Where-Object { $_ -in $after }).Count } }
    Test-LayerFile checked/figure.psd -Profile studio.layerprofile.json -Quiet -AsSarif after.sarif
}

Title '8. Measures, with pictures'
. Step 'How alike are left and right? 100 % is the same to the pixel. The end of the scarf hangs to one side on purpose.' {
    $checked = Get-LayerFile checked/figure.psd
    $checked | Measure-LayerSymmetry | Where-Object Iou | Sort-Object Iou | Select-Object -First 4
    $checked | Measure-LayerSymmetry -Heatmap symmetry.png > $null
}
. Step 'Which seams would open when a part moves? In the pictures red is what would open, dark blue what is painted on underneath.' {
    $checked | Measure-LayerCover -By Neighbour | Sort-Object ShallowLength -Descending | Select-Object -First 4
    $seams = $checked | Measure-LayerCover -Picture seams
    "$($seams.Count) pictures of seams"
}
. Step 'How near can the camera come before a screen shows single pixels? And what would a screen show of the face?' {
    $checked | Measure-LayerDetail
    $checked | Measure-LayerDetail -Framing Face -Picture screens > $null
}
. Step 'How many texture pages will the parts take?' {
    $checked | Measure-LayerBudget
    $checked | Measure-LayerBudget -Picture pages > $null
}
. Step 'And a light rig at half the size, for weak machines: parts, paths and guides together.' {
    $checked | Resize-LayerFile -Percent 50 | Save-LayerFile -Destination light | Format-Table Name, Length
    Get-LayerFile light/figure.psd | Format-List Width, Height, Axis, LayerCount
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
    'studio.layerprofile.json' = 'the rules that were learned from rig/figure.psd'
    'before.sarif'            = 'what was wrong with figure.psd, for systems that run checks'
    'after.sarif'             = 'the same for checked/figure.psd'
    'checked/figure.psd'      = 'figure.psd put right by the rules'
    'symmetry.png'            = 'where its halves differ'
    'seams/figure'            = 'seams that would open, one picture each'
    'screens'                 = 'what a screen shows of the face, pixel for pixel'
    'pages'                   = 'its parts on texture pages'
    'light/figure.psd'        = 'the same at half the size'
    'names.csv'               = 'the list of old and new names'
    'undo.csv'                = 'every change; Rename-Layer -Map undo.csv -Reverse takes the names back'
}
foreach ($path in $notes.Keys) {
    $size = (Get-ChildItem -LiteralPath $path -Recurse -File | Measure-Object Length -Sum).Sum / 1MB
    Write-Host ('  {0,-26}{1,7:N1} MB  {2}' -f $path, $size, $notes[$path])
}
Write-Host "`nAll of it is in $OutputFolder. The whole story took $([int] $watch.Elapsed.TotalSeconds) seconds."
