<#
.SYNOPSIS
Times the main job beside a plain copy and other libraries, on the same files in one run, and prints a table of ratios.
.DESCRIPTION
Draws the figure at full size with 100 and with 400 layers first, once. Libraries that are not installed are left out, and the table says so.
#>
[CmdletBinding()]
param(
    [Parameter(Mandatory)] [string] $ModuleFolder,
    [Parameter(Mandatory)] [string] $OutputFolder
)

Set-StrictMode -Version 3.0
$ErrorActionPreference = 'Stop'
Import-Module "$PSScriptRoot/../Module.Tests/Support/Readers.psm1"

function Invoke-Tool([string[]] $Command) {
    $executable = $Command[0]
    $arguments = @($Command | Select-Object -Skip 1)
    $output = & $executable @arguments
    if ($LASTEXITCODE -ne 0) { throw "$($Command -join ' ') ended with $LASTEXITCODE." }
    $output | Select-Object -Last 1
}

function Get-Figure([string] $Name, [string[]] $Options) {
    $path = Join-Path $OutputFolder $Name
    if (-not (Test-Path -LiteralPath $path)) {
        Write-Host "Drawing $Name."
        Invoke-Tool (@('dotnet', 'run', '--project', "$PSScriptRoot/../Figure", '--configuration', 'Release', '--verbosity', 'quiet', '--', $path) + $Options) > $null
    }
    $path
}

function Get-SaveMemory([string] $Path, [string] $Edit) {
    $destination = Join-Path $OutputFolder 'memory.psd'
    $first = [Environment]::GetCommandLineArgs()[0]
    $shell = @((Get-Process -Id $PID).Path) + @(if ($first -like '*.dll') { $first })
    $arguments = '-NoLogo', '-NoProfile', '-NonInteractive', '-File', "$PSScriptRoot/Measure-SaveMemory.ps1",
        '-ModuleFolder', $ModuleFolder, '-Path', $Path, '-Destination', $destination, '-Edit', $Edit
    try { [double] (Invoke-Tool ($shell + $arguments)) } finally { Remove-Item -LiteralPath $destination -ErrorAction Ignore }
}

function New-Row([string] $What, [string] $Ours, [string] $Other, [double] $Value, [string] $Unit, [double] $Goal, [switch] $AtLeast) {
    $isMet = if ($AtLeast) { $Value -ge $Goal } else { $Value -le $Goal }
    [pscustomobject]@{
        What = $What
        LayerTools = $Ours
        Other = $Other
        Result = '{0:0.0#} {1}' -f $Value, $Unit
        Goal = '{0} {1}' -f $(if ($AtLeast) { 'at least' } else { 'at most' }), $Goal
        Met = if ($isMet) { 'yes' } else { 'NO' }
    }
}

$OutputFolder = (New-Item -ItemType Directory -Path $OutputFolder -Force).FullName
[cultureinfo]::CurrentCulture = [cultureinfo]::InvariantCulture
$quarter = Get-Figure 'figure-100-quarter.psd' '--layers', '100', '--scale', '0.25'

$project = "$PSScriptRoot/Benchmarks.csproj"
Invoke-Tool 'dotnet', 'build', $project, '--configuration', 'Release', '--verbosity', 'quiet', '--nologo' > $null
$program = & dotnet msbuild $project -getProperty:TargetPath -property:Configuration=Release
$readers = @(Find-OutsideReader)
$agPsd = $readers | Where-Object Name -EQ 'ag-psd'
$psdTools = $readers | Where-Object Name -EQ 'psd-tools'

$rows = foreach ($count in 100, 400) {
    $file = Get-Figure "figure-$count.psd" '--layers', $count
    Write-Host "Measuring $(Split-Path $file -Leaf)."
    $own = Invoke-Tool 'dotnet', $program, 'compare', $file | ConvertFrom-Json
    $trees = @{}
    if ($agPsd.Command) { $trees['ag-psd'] = [double] (Invoke-Tool $agPsd.Command[0], "$PSScriptRoot/others/tree.mjs", $agPsd.Command[2], $file) }
    if ($psdTools.Command) {
        $python = Invoke-Tool $psdTools.Command[0], "$PSScriptRoot/others/measure.py", $file, ($own.mirrored -join ',') | ConvertFrom-Json
        $trees['psd-tools'] = $python.treeMs
    }

    if ($trees.Count) {
        $fastest = $trees.GetEnumerator() | Sort-Object Value | Select-Object -First 1
        New-Row "tree, $count layers" ('{0:0.0} ms' -f $own.treeMs) ('{0:0} ms {1}' -f $fastest.Value, $fastest.Key) ($fastest.Value / $own.treeMs) 'times faster' 20 -AtLeast
    }
    New-Row "tree, $count layers, memory" ('{0:0.0} MB' -f ($own.treeBytes / 1MB)) '' ($own.treeBytes / 1MB) 'MB' 4
    if ($count -eq 100) {
        $small = Invoke-Tool 'dotnet', $program, 'compare', $quarter | ConvertFrom-Json
        New-Row 'tree, against a sixteenth of the pixels' ('{0:0.0} ms' -f $own.treeMs) ('{0:0.0} ms' -f $small.treeMs) ($own.treeMs / $small.treeMs) 'times' 1.5
    }
    New-Row "rename all and save, $count layers" ('{0:0} ms' -f $own.saveMs) ('{0:0} ms copy, flushed' -f $own.copyMs) ($own.saveMs / $own.copyMs) 'times a copy' 1.5
    if ($psdTools.Command) {
        New-Row "mirror $($own.mirrored.Count) of $count layers" ('{0:0} ms' -f $own.mirrorMs) ('{0:0} ms psd-tools, no encoding' -f $python.mirrorMs) ($python.mirrorMs / $own.mirrorMs) 'times faster' 5 -AtLeast
    }
    if ($count -eq 100) {
        New-Row 'composite, 100 layers' ('{0:0} ms' -f $own.compositeMs) '' ($own.compositeMs / 1000) 's' 0.5
        $magick = Invoke-Tool 'dotnet', $program, 'magick', $file, $own.imageBytes | ConvertFrom-Json
        $merged = $magick.readMs + $magick.mergeMs
        New-Row 'composite, 100 layers' ('{0:0} ms' -f $own.compositeMs) ('{0:0} ms Magick.NET, read and merge' -f $merged) ($merged / $own.compositeMs) 'times faster' 4 -AtLeast
        if ($psdTools.Command) {
            $drawn = Invoke-Tool $psdTools.Command[0], "$PSScriptRoot/others/composite.py", $file | ConvertFrom-Json
            New-Row 'composite, 100 layers' ('{0:0} ms' -f $own.compositeMs) ('{0:0} ms psd-tools' -f $drawn.compositeMs) ($drawn.compositeMs / $own.compositeMs) 'times faster' 20 -AtLeast
        }
        New-Row 'all checks, 100 layers' ('{0:0} ms' -f $own.checkMs) '' ($own.checkMs / 1000) 's' 2
        if ($psdTools.Command) {
            $drawn = Invoke-Tool $psdTools.Command[0], "$PSScriptRoot/others/composite.py", $quarter | ConvertFrom-Json
            New-Row 'all checks, 100 layers' ('{0:0} ms' -f $own.checkMs) ('{0:0} ms psd-tools, composite of 1250 x 1500' -f $drawn.compositeMs) ($own.checkMs / $drawn.compositeMs) 'of its time' 0.25
        }
        New-Row 'comparing deliveries, 5 of 100 layers differ' ('{0:0} ms' -f $own.deliveryMs) '' ($own.deliveryMs / 1000) 's' 1
        $early, $late = (Invoke-Tool 'dotnet', $program, 'folder-memory', $quarter) -split ' ' | ForEach-Object { [long] $_ }
        New-Row 'checks of 100 files of 1250 x 1500, memory' ('{0:0} MB' -f ($late / 1MB)) ('{0:0} MB after 10' -f ($early / 1MB)) ($late / $early) 'times' 1.25
        $canvas = 4L * 5000 * 6000
        $memory = [long] (Invoke-Tool 'dotnet', $program, 'composite-memory', $file)
        New-Row 'composite, 100 layers, memory' ('{0:0} MB' -f ($memory / 1MB)) ('{0:0} MB canvas' -f ($canvas / 1MB)) ($memory / $canvas) 'canvases' 2
        New-Row 'sheet of all parts as PNG, 100 layers' ('{0:0} ms' -f $own.sheetMs) '' ($own.sheetMs / 1000) 's' 2
        $thumbnails = Invoke-Tool 'dotnet', $program, 'magick-thumbnails', $file, '288' | ConvertFrom-Json
        New-Row 'sheet of all parts as PNG, 100 layers' ('{0:0} ms' -f $own.sheetMs) ('{0:0} ms Magick.NET, read and resize' -f $thumbnails.thumbnailsMs) ($thumbnails.thumbnailsMs / $own.sheetMs) 'times faster' 1.5 -AtLeast
        if ($psdTools.Command) {
            $thumbnails = Invoke-Tool $psdTools.Command[0], "$PSScriptRoot/others/thumbnails.py", $file, '288' | ConvertFrom-Json
            New-Row 'sheet of all parts as PNG, 100 layers' ('{0:0} ms' -f $own.sheetMs) ('{0:0} ms psd-tools, small pictures alone' -f $thumbnails.thumbnailsMs) ($thumbnails.thumbnailsMs / $own.sheetMs) 'times faster' 1.5 -AtLeast
        }
        $memory = [long] (Invoke-Tool 'dotnet', $program, 'sheet-memory', $file)
        New-Row 'sheet of all parts as PNG, memory' ('{0:0} MB' -f ($memory / 1MB)) 'whole process' ($memory / 1MB) 'MB' 200
        New-Row 'sheet of all parts as PDF, size' ('{0:0.0} MB' -f ($own.pdfBytes / 1MB)) '' ($own.pdfBytes / 1MB) 'MB' 5
        if ($magick.quality) {
            $written = $magick.readMs + $magick.imagesMs
            New-Row 'pictures of all parts, 100 layers' ('{0:0} ms, {1:0.0} MB' -f $own.imagesMs, ($own.imageBytes / 1MB)) ('{0:0} ms, {1:0.0} MB Magick.NET' -f $written, ($magick.imageBytes / 1MB)) ($written / $own.imagesMs) 'times faster' 1.5 -AtLeast
        }
    }
    foreach ($edit in 'rename', 'redraw') {
        $memory = Get-SaveMemory $file $edit
        New-Row "memory while saving, $count layers, $edit" ('{0:0} MB' -f $memory) 'over idle' $memory 'MB' 100
    }
}

$table = $rows | Format-Table What, LayerTools, Other, Result, Goal, Met -AutoSize | Out-String -Width 200
Set-Content -LiteralPath (Join-Path $OutputFolder 'comparison.txt') -Value $table -Encoding utf8
Write-Host $table
foreach ($reader in $readers | Where-Object { -not $_.Command }) { Write-Host "Without $($reader.Name): $($reader.Reason)." }
Write-Host "The table is in $(Join-Path $OutputFolder 'comparison.txt')."
