<#
.SYNOPSIS
How far the memory of a fresh session rises while a file is edited and saved, in MB over what the session holds with the module imported and the file read.
.DESCRIPTION
Writes one number. Peak working set of this process, so it has to run in one of its own.
#>
[CmdletBinding()]
param(
    [Parameter(Mandatory)] [string] $ModuleFolder,
    [Parameter(Mandatory)] [string] $Path,
    [Parameter(Mandatory)] [string] $Destination,
    [Parameter(Mandatory)] [ValidateSet('rename', 'redraw')] [string] $Edit
)

$ErrorActionPreference = 'Stop'
Import-Module $ModuleFolder
$file = Get-LayerFile -LiteralPath $Path
[GC]::Collect()
$idle = (Get-Process -Id $PID).WorkingSet64
if ($Edit -eq 'rename') { $file | Rename-Layer -Match '$' -Replacement ' renamed' > $null }
else { $file | Set-Layer -LayerNumber 1 -Visible $false > $null }
$file | Save-LayerFile -Destination $Destination -Force -WarningAction SilentlyContinue > $null
$process = Get-Process -Id $PID
[Math]::Max(0, ($process.PeakWorkingSet64 - $idle) / 1MB).ToString('0.0', [cultureinfo]::InvariantCulture)
